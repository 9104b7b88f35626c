import {
  type Account,
  type Advice,
  type Proposal,
  proposalOf,
  type Ranking,
} from '../suspects/index.ts';
import { type Inquiry } from '../cause/index.ts';
import { type Test, testText } from '../sight/index.ts';
import type { StoppedTest } from './bar.ts';
import { chosen } from './choice.ts';
import { type TestPlace, PLACES, placeOf } from './place.ts';
import { type Triage, triageOf } from './triage.ts';

/** What to do next, and what not to. */
export interface Counsel extends Advice {
  readonly stops: readonly StoppedTest[];
  /** Of the tests that are proposed: so many come first in the trade, whatever they tell. */
  readonly first: number;
  /** Before these, so many that were made already: what they showed does not fit with the rest. */
  readonly again: number;
}

/** What is to be known of tests besides their train. */
interface Ways {
  /** Whether somebody would make a test at all. */
  readonly open: (test: Test) => boolean;
  /** What contradicts, and may be looked at again. */
  readonly again: readonly Test[];
}

/**
 * What contradicts is taken again, once, where that costs less than what would be done next; then
 * what comes first of the trade's order, then the tests that tell most for what they cost, of those
 * that may be made.
 */
export function advise(
  inquiry: Inquiry,
  accounts: readonly Account[],
  { belief }: Ranking,
  { open, again: doubted }: Ways,
): Counsel {
  const triage = triageOf(inquiry, accounts, belief);
  const may = (test: Test) => open(test) && !triage.barOf(test);
  const first = triage.first
    .filter(open)
    .map((test) => proposalOf(inquiry, accounts, belief, test));
  const sooner = new Set(triage.first);
  const { proposed, heldBack } = chosen(inquiry, accounts, belief, (test) => {
    return may(test) && !sooner.has(test);
  });
  const dearest = costOf(inquiry, [...first, ...proposed][0]);
  const again = doubted
    .filter((test) => open(test) && saidOf(accounts, test) < MOST_SAID)
    .map((test) => proposalOf(inquiry, accounts, belief, test))
    .filter(({ opening, practised }) => opening === 0 && practised.risk !== 'high')
    .filter((its) => costOf(inquiry, its) < dearest)
    .toSorted((a, b) => a.minutes - b.minutes)
    .slice(0, MOST_AGAIN);
  const anew = new Set(again.map(({ test }) => testText(test)));
  const sound = [...first, ...proposed].filter(({ test }) => !anew.has(testText(test)));
  const [best, ...after] = [...again, ...sound];
  return {
    ...(best && { best }),
    others: after.slice(0, Math.max(MOST_AFTER, first.length - 1) + again.length),
    heldBack,
    first: first.length,
    again: again.length,
    stops: stopsOf(triage, leftOf(inquiry, triage, open)),
  };
}

const MOST_AFTER = 2;
const MOST_AGAIN = 2;
// In minutes at no risk; what is not there costs all that there is.
function costOf({ experience }: Inquiry, proposal: Proposal | undefined): number {
  if (!proposal) return Infinity;
  const { opening, minutes, practised } = proposal;
  return opening + minutes * experience.risks[practised.risk];
}

// What was seen twice is believed.
const MOST_SAID = 2;

function saidOf(accounts: readonly Account[], test: Test): number {
  return accounts.find((its) => testText(its.test) === testText(test))?.said.length ?? 0;
}

// Where the road is closed nobody pulls; what closes it, or a pull, is no news of a stall.
function stopsOf({ stops }: Triage, left: StoppedTest['left']): StoppedTest[] {
  const [road = [], pulling = []] = [stops.get('road test'), stops.get('pulling hard')];
  const told = new Set([...road, ...pulling].map(({ why }) => why));
  return [...stops].flatMap(([stop, bars]): StoppedTest[] => {
    if (stop === 'pulling hard' && road.length > 0) return [];
    const news = stop === 'stall test' ? bars.filter(({ why }) => !told.has(why)) : bars;
    return [{ stops: stop, bars: news, left }];
  });
}

// The kinds of test that may be made, place by place.
function leftOf(inquiry: Inquiry, triage: Triage, open: (test: Test) => boolean) {
  const left = new Map<TestPlace, string[]>();
  for (const place of PLACES) {
    const kinds = inquiry.tests.filter((test) => {
      return placeOf(test.test) === place && open(test) && !triage.barOf(test);
    });
    if (kinds.length > 0) left.set(place, [...new Set(kinds.map(({ test }) => test))]);
  }
  return left;
}
