import {
  diagnose,
  type Inquiry,
  type Observation,
  type Test,
} from '../../engine/suspects/index.ts';
import type { Suspicion } from '../../telling/report/index.ts';

/** All that can be said of what was seen. `may`: whether a test may still be offered. */
export function suspicionOf(
  inquiry: Inquiry,
  observations: readonly Observation[],
  practice: string,
  may?: (test: Test) => boolean,
): Suspicion {
  return { ...diagnose(inquiry, observations, may), practice };
}
