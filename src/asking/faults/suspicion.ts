import { complaintSeen } from '../../engine/complaint/index.ts';
import { readExperience, type UnitStage } from '../../engine/experience/index.ts';
import { type Cause, inquire, type Inquiry } from '../../engine/cause/index.ts';
import { type Observation, readSeen } from '../../engine/suspects/index.ts';
import { type Test, testText } from '../../engine/sight/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { diagnose, type Diagnosis } from '../../engine/triage/index.ts';
import { gripsOf } from '../../shop/capacity/index.ts';
import {
  type Failure,
  failuresOf,
  type Finding,
  findingsIn,
  type Shown,
  shownOf,
} from '../../shop/causes/index.ts';
import { sinceRebuilt, standing } from '../../shop/records/index.ts';
import type { OpenJob } from '../job/index.ts';
import {
  errorsIn,
  type Given,
  mustBeSound,
  NoAnswer,
  type Renamed,
  renamedIn,
} from '../request/index.ts';
import { type Explained, explanationOf } from './explanation.ts';
import { stageIn } from './stage.ts';

/** What was seen, in a text of it and in a job, and how often things are wrong in the shop. */
export interface SuspectsRequest {
  readonly experience: Given;
  readonly seen?: Given;
  readonly job?: OpenJob;
}

/** A train under suspicion, before anything is made of what was told. */
export interface Case {
  readonly inquiry: Inquiry;
  readonly told: Witnessed;
  /** What was found as the unit came apart. */
  readonly findings: readonly Finding[];
  /** What the shop's figures are called. */
  readonly experience: string;
  readonly renamed: readonly Renamed[];
}

/** What was seen, by somebody and by a driver. */
export interface Witnessed {
  readonly observations: readonly Observation[];
  /** Those of them that a driver told, and in which words. */
  readonly heard: readonly Heard[];
  /** Those that stand in notes of what was found as the unit came apart. */
  readonly found?: readonly Shown[];
  /** What the driver says of which nothing could be made. */
  readonly unused: readonly string[];
}

/** What a driver's words were taken for. */
export interface Heard {
  readonly observation: Observation;
  readonly said: string;
}

/** That a cause explains what was seen, observation by observation, or what of it it does not. */
export interface Proof {
  readonly cause: Cause;
  readonly explained: readonly Explained[];
}

/** What is known of a train under suspicion. */
export interface Suspicion extends Diagnosis {
  /** What the leading suspects would show of all that was seen. */
  readonly proofs: readonly Proof[];
  /** Why it failed, where something was found as it came apart; it is put right before the build. */
  readonly failures: readonly Failure[];
  /** What the driver says of which nothing could be made. */
  readonly unused: readonly string[];
  /** What the shop's figures are called. */
  readonly experience: string;
  /** Where the unit is, by its job. */
  readonly at?: UnitStage;
}

/** Reads what was told. It takes as long as what a train's faults would show takes to work out. */
export function caseOf(train: Train, { experience, ...told }: SuspectsRequest): Case {
  return caseWith(underSuspicion(train, experience), told);
}

/** A train of which nothing was told yet: what its faults would show is worked out once. */
export function underSuspicion(
  train: Train,
  { called, text }: Given,
): Omit<Case, 'told' | 'findings'> {
  const { experience: figures, problems } = readExperience(text);
  if (!figures) throw new NoAnswer({ refused: 'bad.file', called, problems });
  const inquiry = inquire(train, figures, gripsOf(train));
  return { inquiry, experience: called, renamed: renamedIn(called, problems) };
}

/** Refuses a text that is no shop's figures. */
export function mustBeExperience({ called, text }: Given): void {
  const { experience, problems } = readExperience(text);
  if (!experience) throw new NoAnswer({ refused: 'bad.file', called, problems });
}

/** The same, with what was seen and said. */
export function caseWith(
  its: Omit<Case, 'told' | 'findings'>,
  { seen, job }: Omit<SuspectsRequest, 'experience'>,
): Case {
  const { inquiry } = its;
  const read = seen ? seenIn(seen, inquiry) : NOTHING;
  const other = job?.seen(inquiry) ?? NOTHING;
  const now = job && sinceRebuilt(job.job);
  const says = [...(now?.complaint ? [now.complaint] : []), ...read.says, ...other.says];
  const all = [...read.observations, ...other.observations];
  const unsaid = [...read.unsaid, ...other.unsaid];
  const told = witnessedBy(inquiry, all, says, unsaid);
  const notes = now ? standing(now, 'note').map(({ told: { note } }) => note) : [];
  const findings = findingsIn(inquiry.train, notes, told.observations);
  const found = shownOf(inquiry, findings, told.observations);
  const observations = [...told.observations, ...found.map(({ observation }) => observation)];
  const at = now && stageIn(now, inquiry);
  return {
    ...its,
    inquiry: at ? { ...inquiry, at } : inquiry,
    told: { ...told, observations, found },
    findings,
    renamed: [...its.renamed, ...read.renamed],
  };
}

/**
 * What was seen, and what the driver says of it in their own words, once what they say twice: in the
 * job and to who asks; nothing of the tests of which they say nothing after all.
 */
export function witnessedBy(
  inquiry: Inquiry,
  seen: readonly Observation[],
  says: readonly string[],
  unsaid: readonly Test[] = [],
): Witnessed {
  const out = new Set(unsaid.map(testText));
  const complaints = says.map((text) => complaintSeen(text, inquiry));
  const told = new Set<string>();
  const heard = complaints
    .flatMap(({ observations, said }) =>
      observations.map((observation, k) => ({ observation, said: said[k] ?? '' })),
    )
    .filter(({ observation: { test } }) => !out.has(testText(test)))
    .filter(({ observation }) => {
      const its = JSON.stringify(observation);
      return !told.has(its) && told.add(its);
    });
  return {
    observations: [...heard.map(({ observation }) => observation), ...seen],
    heard,
    unused: [...new Set(complaints.flatMap(({ unused }) => unused))],
  };
}

/** All that can be said of what was told. `open`: whether a test may still be offered. */
export function suspicionOf(
  { inquiry, told, experience, findings = [] }: Asked,
  open?: (test: Test) => boolean,
): Suspicion {
  const { observations, unused } = told;
  // The fluid alone tells of no strip.
  const opened = findings.some(({ said }) => !said.startsWith('fluid: '));
  const failures = opened ? failuresOf(inquiry.train, findings) : [];
  const { at } = inquiry;
  const its = diagnose(inquiry, observations, open);
  const [leading] = observations.length > 0 ? its.ranking.brackets : [];
  const proofs = (leading?.suspects ?? []).slice(0, MOST_PROVED).map(({ cause }) => {
    return { cause, explained: explanationOf(its, cause) };
  });
  return { ...its, proofs, failures, unused, experience, ...(at && { at }) };
}

// More that nothing parts would show the same.
const MOST_PROVED = 6;

type Asked = Pick<Case, 'inquiry' | 'told' | 'experience'> & Partial<Pick<Case, 'findings'>>;

const NOTHING = { observations: [], says: [], unsaid: [], renamed: [] };

function seenIn(seen: Given, inquiry: Inquiry) {
  const { problems, ...read } = readSeen(seen.text, inquiry);
  mustBeSound(seen, errorsIn(problems));
  return { ...read, renamed: renamedIn(seen.called, problems) };
}
