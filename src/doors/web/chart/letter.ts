import { type DeviceWork, isSpan } from '../../../engine/flow/index.ts';

/** What a device does in a gear, as the chart tells it. */
export type Letter = 'on' | 'idle' | 'holding' | 'over-running' | 'off';

export function letterOf({ state, torque }: DeviceWork): Letter {
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
