import type { TestWord } from '../practice/index.ts';
import type { Test } from '../suspects/index.ts';

// Fluid and record, codes, lever, pressure, engagement standing still; then the road; then what
// opens something; a stall is hard on everything, and comes last. Common practice, no source.
const ORDER: readonly TestWord[] = [
  'fluid',
  'build record',
  'codes',
  'selector',
  'pressure',
  'device pressure',
  'engagement',
  'under power',
  'coast',
  'shift',
  'manual shift',
  'slip log',
  'noise',
  'pan',
  'filter',
  'band check',
  'valve body',
  'air check',
  'stall',
  'end play',
  'seal rings',
  'inspection',
  'hand check',
];

/** The tests in the order in which the trade comes to a sick car; those of a kind as they stood. */
export function inTradeOrder(tests: readonly Test[]): Test[] {
  return tests.toSorted((a, b) => ORDER.indexOf(a.test) - ORDER.indexOf(b.test));
}
