import { type Growler, growlers as growlersIn, type Heard } from '../noise/index.ts';
import {
  type Account,
  accountsOf,
  type Doubt,
  doubtsOf,
  type Observation,
  pairsOf,
  rank,
  type Ranking,
} from '../suspects/index.ts';
import { type Cause, type Inquiry } from '../cause/index.ts';
import { type Test, testText } from '../sight/index.ts';
import { isOfParts } from './place.ts';
import { triageOf } from './triage.ts';
import { advise, type Counsel } from './advise.ts';

/** All that can be said of what was seen. */
export interface Diagnosis {
  /** Of single causes; of pairs, where it takes two to explain what was seen. */
  readonly inquiry: Inquiry;
  readonly observations: readonly Observation[];
  readonly ranking: Ranking;
  readonly advice: Counsel;
  /** What must be mistaken if one cause is to explain the rest; none where one explains it all. */
  readonly doubts: readonly Doubt[];
  /** What it would be worth to look at again, where something must be mistaken; nothing that stops. */
  readonly again: readonly Test[];
  /** Two faults at once that explain everything, where no one does. */
  readonly pairs: readonly Cause[];
  /** What is at work in the gears that growl, and not in the quiet ones. */
  readonly growlers: readonly Growler[];
}

/**
 * Which fault it is: one, if one explains everything that was surely seen; else two at once, if
 * two do; else one, and what must be doubted. What to do next has passed triage. `open`: whether
 * somebody would make a test at all.
 */
export function diagnose(
  inquiry: Inquiry,
  observations: readonly Observation[],
  open: (test: Test) => boolean = () => true,
): Diagnosis {
  const accounts = accountsOf(inquiry, observations);
  const single = rank(inquiry, accounts);
  const doubts = doubtsOf(inquiry, accounts, single.chances);
  const pairs = doubts.length > 0 ? pairsOf(inquiry, accounts) : [];
  const growlers = growlersIn(
    inquiry.train,
    heardIn(accounts, 'growls'),
    heardIn(accounts, 'quiet'),
  );
  const doubted = againOf(inquiry, accounts, single, doubts);
  // What two faults at once explain, somebody who held the part in their hands did not mistake.
  const again = pairs.length > 0 ? doubted.filter(({ test }) => !isOfParts(test)) : doubted;
  const told = { observations, doubts, again, pairs, growlers };
  if (pairs.length === 0) {
    const advice = advise(inquiry, accounts, single, { open, again });
    return { ...told, inquiry, ranking: single, advice };
  }
  const { at } = inquiry;
  const both = { ...inquiry.with(pairs), ...(at && { at }) };
  const its = accountsOf(both, observations);
  const ranking = rank(both, its);
  const advice = advise(both, its, ranking, { open, again });
  return { ...told, inquiry: both, ranking, advice };
}

// What every way of explaining the rest sets aside, the likeliest first, each test once.
function againOf(
  inquiry: Inquiry,
  accounts: readonly Account[],
  { belief }: Ranking,
  doubts: readonly Doubt[],
): Test[] {
  const tests = new Map(
    doubts.flatMap((doubt) => doubt.observations).map(({ test }) => [testText(test), test]),
  );
  if (tests.size === 0) return [];
  const triage = triageOf(inquiry, accounts, belief);
  return [...tests.values()].filter((test) => !triage.stopOf(test));
}

function heardIn(accounts: readonly Account[], word: 'growls' | 'quiet'): Heard[] {
  return accounts.flatMap(({ test, said, prediction: { outcomes } }): Heard[] => {
    if (test.test !== 'noise') return [];
    const so = said.some(({ means }) => means.every((o) => outcomes[o]?.word === word));
    return so ? [{ gear: test.gear, on: test.on }] : [];
  });
}
