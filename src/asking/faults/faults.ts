import {
  CheckFinder,
  type BenchSign,
  everyFault,
  type FaultMatrix,
  faultMatrix,
} from '../../engine/faults/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { faultsOf, NoAnswer, raceHeld, type Stand, standAt } from '../request/index.ts';

/** Every fault, or some, against every gear; two at once with `pairs`, and then no hand checks. */
export interface FaultsRequest {
  readonly pairs?: boolean;
  /** Faults as in "low sprag: backwards", with commas between. */
  readonly only?: string;
  readonly seenFrom?: string;
  /** The race of a one-way clutch that is held. */
  readonly hold?: string;
}

/** Faults against gears, and for each row what shows it on the bench, where that was asked. */
export interface FaultsReport {
  readonly train: Train;
  readonly matrix: FaultMatrix;
  readonly bench?: readonly (BenchSign | undefined)[];
}

/** `tell` is told how many rows are done, now and then. */
export function askFaults(
  train: Train,
  { pairs = false, only, seenFrom, hold }: FaultsRequest,
  tell?: (done: number, all: number) => void,
): { readonly report: FaultsReport; readonly stand: Stand } {
  const stand = raceHeld(standAt(train, seenFrom), hold);
  // Of two at once, those that slip are asked by name: they are too many.
  const every = () => everyFault(train, { slipping: !pairs });
  const faults = only === undefined ? every() : faultsOf(train, only);
  refuseEndless(train, pairs ? (faults.length * (faults.length + 1)) / 2 : faults.length);
  const matrix = faultMatrix(train, { pairs, spins: !pairs, only: faults, ...(tell && { tell }) });
  if (pairs) return { report: { train, matrix }, stand };
  const finder = new CheckFinder(train);
  const bench = matrix.rows.map((row) => finder.sign(row.faults));
  return { report: { train, matrix, bench }, stand };
}

// Some minutes' work on the largest train that is read, and more rows than anybody reads.
const MOST_CELLS = 250_000;

function refuseEndless({ ranges }: Train, rows: number): void {
  const gears = ranges.reduce((sum, range) => sum + range.gears.length, 0);
  if (rows * gears > MOST_CELLS) throw new NoAnswer({ refused: 'bad.many faults', rows, gears });
}
