import { type Account, type Advice, proposalOf, type Ranking } from '../suspects/index.ts';
import { type Inquiry } from '../cause/index.ts';
import { type Test } from '../sight/index.ts';
import type { StoppedTest } from './bar.ts';
import { chosen } from './choice.ts';
import { type TestPlace, PLACES, placeOf } from './place.ts';
import { type Triage, triageOf } from './triage.ts';

/** What to do next, and what not to. */
export interface Counsel extends Advice {
  readonly stops: readonly StoppedTest[];
  /** Of the tests that are proposed: so many come first in the trade, whatever they tell. */
  readonly first: number;
}

/**
 * What comes first of the trade's order, then the tests that tell most for what they cost, of
 * those that may be made. `open`: whether somebody would make a test at all.
 */
export function advise(
  inquiry: Inquiry,
  accounts: readonly Account[],
  { belief }: Ranking,
  open: (test: Test) => boolean = () => true,
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
  const [best, ...after] = [...first, ...proposed];
  return {
    ...(best && { best }),
    others: after.slice(0, Math.max(MOST_AFTER, first.length - 1)),
    heldBack,
    first: first.length,
    stops: stopsOf(triage, leftOf(inquiry, triage, open)),
  };
}

const MOST_AFTER = 2;

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
