import { complaintSeen } from '../../engine/complaint/index.ts';
import { readPractice } from '../../engine/practice/index.ts';
import {
  inquire,
  type Inquiry,
  type Observation,
  readSeen,
  type Test,
} from '../../engine/suspects/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { diagnose, type Diagnosis } from '../../engine/triage/index.ts';
import { gripsOf } from '../../shop/capacity/index.ts';
import type { OpenJob } from '../job/index.ts';
import {
  errorsIn,
  type Given,
  mustBeSound,
  NoAnswer,
  type Renamed,
  renamedIn,
} from '../request/index.ts';

/** What was seen, in a text of it and in a job, and how often things are wrong in the shop. */
export interface SuspectsRequest {
  readonly practice: Given;
  readonly seen?: Given;
  readonly job?: OpenJob;
}

/** A train under suspicion, before anything is made of what was told. */
export interface Case {
  readonly inquiry: Inquiry;
  readonly told: Witnessed;
  /** What the shop's figures are called. */
  readonly practice: string;
  readonly renamed: readonly Renamed[];
}

/** What was seen, by somebody and by a driver. */
export interface Witnessed {
  readonly observations: readonly Observation[];
  /** What the driver says of which nothing could be made. */
  readonly unused: readonly string[];
}

/** What is known of a train under suspicion. */
export interface Suspicion extends Diagnosis {
  /** What the driver says of which nothing could be made. */
  readonly unused: readonly string[];
  /** What the shop's figures are called. */
  readonly practice: string;
}

/** Reads what was told. It takes as long as what a train's faults would show takes to work out. */
export function caseOf(train: Train, { practice, seen, job }: SuspectsRequest): Case {
  const { practice: figures, problems } = readPractice(practice.text);
  if (!figures) throw new NoAnswer({ refused: 'bad.file', called: practice.called, problems });
  const inquiry = inquire(train, figures, gripsOf(train));
  const read = seen ? seenIn(seen, inquiry) : NOTHING;
  const complaints = job?.job.complaint ? [job.job.complaint, ...read.says] : read.says;
  const all = [...read.observations, ...(job?.seen(inquiry) ?? [])];
  return {
    inquiry,
    told: witnessedBy(inquiry, all, complaints),
    practice: practice.called,
    renamed: [...renamedIn(practice.called, problems), ...read.renamed],
  };
}

/** What was seen, and what the driver says of it in their own words. */
export function witnessedBy(
  inquiry: Inquiry,
  seen: readonly Observation[],
  says: readonly string[],
): Witnessed {
  const complaints = says.map((text) => complaintSeen(text, inquiry));
  return {
    observations: [...complaints.flatMap(({ observations }) => observations), ...seen],
    unused: complaints.flatMap(({ unused }) => unused),
  };
}

/** All that can be said of what was told. `open`: whether a test may still be offered. */
export function suspicionOf(
  {
    inquiry,
    told: { observations, unused },
    practice,
  }: Pick<Case, 'inquiry' | 'told' | 'practice'>,
  open?: (test: Test) => boolean,
): Suspicion {
  return { ...diagnose(inquiry, observations, open), unused, practice };
}

const NOTHING = { observations: [], says: [], renamed: [] };

function seenIn(seen: Given, inquiry: Inquiry) {
  const { observations, says, problems } = readSeen(seen.text, inquiry);
  mustBeSound(seen, errorsIn(problems));
  return { observations, says, renamed: renamedIn(seen.called, problems) };
}
