import { complaintSeen } from '../../engine/complaint/index.ts';
import type { Inquiry, Observation, Test } from '../../engine/suspects/index.ts';
import { diagnose } from '../../engine/triage/index.ts';
import type { Suspicion } from '../../telling/report/index.ts';

/** What a file, a job and a driver say. */
export interface Told {
  readonly observations: readonly Observation[];
  /** What the driver says of which nothing could be made. */
  readonly unused: readonly string[];
}

/** What was seen, and what the driver says of it in their own words. */
export function toldBy(
  inquiry: Inquiry,
  seen: readonly Observation[],
  says: readonly string[],
): Told {
  const complaints = says.map((text) => complaintSeen(text, inquiry));
  return {
    observations: [...complaints.flatMap(({ observations }) => observations), ...seen],
    unused: complaints.flatMap(({ unused }) => unused),
  };
}

/** All that can be said of what was told. `open`: whether a test may still be offered. */
export function suspicionOf(
  inquiry: Inquiry,
  { observations, unused }: Told,
  practice: string,
  open?: (test: Test) => boolean,
): Suspicion {
  return { ...diagnose(inquiry, observations, open), unused, practice };
}
