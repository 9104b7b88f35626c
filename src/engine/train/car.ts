import type { Sourced } from './capacity.ts';

/** What stands between the train's output and the road. */
export interface Car extends Sourced {
  /** The diameter on which the loaded tyre rolls: twice the height of the axle. */
  readonly 'tyre mm': number;
  /** Turns of the train's output for one of the wheels; absent: 1, the output is a half shaft. */
  readonly 'final drive'?: number;
}
