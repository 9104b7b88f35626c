import type { WearJudgement } from '../../shop/wear/index.ts';
import type { Json } from './json.ts';
import { boundsJson, lengthJson, remarkJson } from './packjson.ts';

/** Lengths as in `packJson`. `worst` is the reading that the verdict is of. */
export function wearJson(judged: readonly WearJudgement[]): Json {
  return judged.map(({ check, smallest, largest, worst, bounds, verdict, remarks }) => ({
    part: check.part,
    measure: check.measure,
    smallest: smallest ? lengthJson(smallest) : null,
    largest: largest ? lengthJson(largest) : null,
    worst: worst ? lengthJson(worst) : null,
    limits: bounds ? boundsJson(bounds) : null,
    verdict: verdict ?? null,
    remarks: remarks.map(remarkJson),
  }));
}
