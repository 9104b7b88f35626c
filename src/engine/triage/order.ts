import type { TestWord } from '../experience/index.ts';
import type { Test } from '../sight/index.ts';

// Fluid and record, codes, lever, pressure, engagement standing still; then the road; then what
// opens something; a stall is hard on everything, and comes last. Common practice, no source.
const ORDER: Readonly<Record<TestWord, number>> = {
  fluid: 1,
  'build record': 2,
  codes: 3,
  selector: 4,
  engine: 5,
  pressure: 6,
  'device pressure': 7,
  engagement: 8,
  'under power': 9,
  coast: 10,
  shift: 11,
  'manual shift': 12,
  'slip log': 13,
  noise: 14,
  'stray pressure': 15,
  pan: 16,
  filter: 17,
  'band check': 18,
  'valve body': 19,
  'air check': 20,
  stall: 21,
  'end play': 22,
  converter: 23,
  pump: 24,
  'seal rings': 25,
  seals: 26,
  'one-way check': 27,
  inspection: 28,
  'hand check': 29,
};

/** The tests in the order in which the trade comes to a sick car; those of a kind as they stood. */
export function inTradeOrder(tests: readonly Test[]): Test[] {
  return tests.toSorted((a, b) => ORDER[a.test] - ORDER[b.test]);
}
