import { chart, type Chart, MOST_DEVICES } from '../../engine/chart/index.ts';
import { isApplied, type Train } from '../../engine/train/index.ts';
import { type AsFound, NoAnswer, trainAsFound } from '../request/index.ts';

/** Every combination of the friction devices, of which there may be MOST_DEVICES. */
export function askChart(
  file: Train,
  request: AsFound,
): { readonly train: Train; readonly chart: Chart } {
  const train = trainAsFound(file, request);
  const count = train.devices.filter(isApplied).length;
  if (count > MOST_DEVICES) {
    throw new NoAnswer({ refused: 'bad.many devices', count, most: MOST_DEVICES });
  }
  return { train, chart: chart(train) };
}
