import { type DeviceWork, isSpan } from '../../engine/flow/index.ts';

/** What a device does in a gear, as every chart and picture tells it. */
export type DeviceDoing = 'on' | 'idle' | 'holding' | 'over-running' | 'off';

/** How a member stands, where a picture marks it too. */
export type Stands = 'held' | 'free';

/**
 * The marks of charts and pictures, the same in every language and on paper, screen and in files:
 * filled for what carries load, no letter that could be a gear's or somebody's code, and told apart
 * without colour from the back of a class. A legend (`marks.chart`, `marks.picture`) stands below.
 */
export const MARKS: Readonly<Record<DeviceDoing | Stands, string>> = {
  on: '●',
  idle: '○',
  holding: '■',
  'over-running': '»',
  off: '',
  held: '■',
  free: '~',
};

export function doingOf({ state, torque }: DeviceWork): DeviceDoing {
  switch (state) {
    case 'applied':
      return isSpan(torque) || torque.num !== 0 ? 'on' : 'idle';
    case 'holding':
    case 'over-running':
      return state;
    case 'released':
    case 'free':
      return 'off';
  }
}
