import { minus, plus, type Rational, times, toNumber, ZERO } from '../../engine/linear/index.ts';

/** A part of a stack-up, in micrometres: it adds to the gap (1) or takes from it (-1). */
export interface StackTerm {
  readonly adds: 1 | -1;
  readonly um: Rational;
  /** More or less; absent: none. */
  readonly tolUm?: Rational;
}

/** What is left of a stack, and how far it may be off, more or less, in micrometres. */
export interface Gap {
  readonly um: Rational;
  /** Every part at its worst end at once. */
  readonly worstUm: Rational;
  /** The root of the sum of squares: parts that vary each by itself, seldom exceed it. */
  readonly likelyUm: number;
}

export function stackUp(terms: readonly StackTerm[]): Gap {
  const sum = (of: readonly Rational[]) => of.reduce(plus, ZERO);
  const tolerances = terms.map(({ tolUm = ZERO }) => tolUm);
  return {
    um: terms.reduce((um, term) => (term.adds > 0 ? plus : minus)(um, term.um), ZERO),
    worstUm: sum(tolerances),
    likelyUm: Math.sqrt(toNumber(sum(tolerances.map((tol) => times(tol, tol))))),
  };
}
