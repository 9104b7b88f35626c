import {
  accountsOf,
  type ProposalPart,
  proposalOf,
  type Ranking,
  readSeen,
} from '../../engine/suspects/index.ts';
import { type TestOutcome, type Test, testText } from '../../engine/sight/index.ts';
import {
  type Bar,
  inTradeOrder,
  type TestPlace,
  placeOf,
  type Triage,
  triageOf,
} from '../../engine/triage/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import { NoAnswer } from '../request/index.ts';
import { type Case, type Suspicion, suspicionOf } from './suspicion.ts';

/** What is suspected, and all that may be asked: plain data, as it goes from one thread to another. */
export interface Examination
  extends Omit<Suspicion, 'inquiry' | 'ranking'>, Pick<Case, 'told' | 'findings'> {
  readonly ranking: Pick<Ranking, 'brackets' | 'enough'>;
  /** Every test that is known of the train, in the order of the trade. */
  readonly tests: readonly Asked[];
}

/** A test that may be asked about. */
export interface Asked {
  readonly test: Test;
  readonly place: TestPlace;
  /** Why it may not be made as things stand, first time or again. */
  readonly stop?: Bar;
}

/** A test, what it can show, and what each of that would leave. */
export interface TestQuestion extends Asked {
  readonly outcomes: readonly TestOutcome[];
  /** The place in `outcomes` of what a train in order shows. */
  readonly whole: number;
  /** That of a gear's own ratio, where it has one. */
  readonly own?: number;
  readonly minutes: number;
  readonly opening: number;
  readonly risk: 'none' | 'low' | 'high';
  readonly with: string;
  readonly parts: readonly ProposalPart[];
}

/** `skipped`: the tests, as `testText` writes them, that somebody does not want to make. */
export function examine(
  its: Case,
  skipped: readonly string[] = [],
): { readonly suspicion: Suspicion; readonly examination: Examination } {
  const without = new Set(skipped);
  const suspicion = suspicionOf(its, (test) => !without.has(testText(test)));
  const { inquiry, ranking, ...rest } = suspicion;
  const { brackets, enough } = ranking;
  const triage = triageIn(suspicion);
  const tests = inTradeOrder(inquiry.tests).map((test) => askedOf(test, triage));
  const examination = {
    ...rest,
    told: its.told,
    findings: its.findings,
    ranking: { brackets, enough },
    tests,
  };
  return { suspicion, examination };
}

/** A test as a question; refuses a name that no test of the train bears. */
export function questionOf(suspicion: Suspicion, named: string): TestQuestion {
  const { inquiry, ranking, observations } = suspicion;
  const { observations: meant, problems } = readSeen(`${named}: as it should`, inquiry);
  const [problem] = problems;
  const [known] = meant;
  if (!known) throw new NoAnswer({ refused: 'bad.entry', problem: problem as Problem });
  const { test } = known;
  const accounts = accountsOf(inquiry, observations);
  const { minutes, opening, practised, parts } = proposalOf(
    inquiry,
    accounts,
    ranking.belief,
    test,
  );
  const { outcomes, whole, own } = inquiry.predict(test);
  const { risk, with: tool } = practised;
  const asked = askedOf(test, triageIn(suspicion));
  const shows = { outcomes, whole, ...(own !== undefined && { own }) };
  return { ...asked, ...shows, minutes, opening, risk, with: tool, parts };
}

function triageIn({ inquiry, observations, ranking }: Suspicion): Triage {
  return triageOf(inquiry, accountsOf(inquiry, observations), ranking.belief);
}

function askedOf(test: Test, triage: Triage): Asked {
  const stop = triage.stopOf(test);
  return { test, place: placeOf(test.test), ...(stop && { stop }) };
}
