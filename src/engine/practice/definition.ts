import * as v from 'valibot';
import type { Expected } from '../trainfile/index.ts';
import { CAUSES, GEAR_ROWS, OUTCOMES, RISKS, STAGES, SURENESSES } from './practice.ts';
import type { Row, TestWord } from './practice.ts';

// The practice file, defined once. The message of a definition is what was expected.
const or = (what: Expected) => what;

const proportion = v.pipe(
  v.number(or('proportion')),
  v.minValue(0, or('proportion')),
  v.maxValue(1_000_000, or('proportion')),
);
const minutes = v.pipe(
  v.number(or('minutes')),
  v.gtValue(0, or('minutes')),
  v.maxValue(100_000, or('minutes')),
);
const between = (from: number, to: number, what: Expected) =>
  v.pipe(v.number(what), v.gtValue(from, what), v.ltValue(to, what));

function each<Key extends string, Form extends v.GenericSchema>(keys: readonly Key[], form: Form) {
  const entries = Object.fromEntries(keys.map((key) => [key, form])) as Record<Key, Form>;
  return v.strictObject(entries, or('section'));
}

const some = <Key extends string>(keys: readonly Key[], form: v.GenericSchema) => {
  return each(keys, v.exactOptional(form) as unknown as v.GenericSchema);
};

// What a test shows: mechanics answer for the tests whose rows need no `otherwise`.
function showing(test: TestWord, rows: readonly Row[], otherwise: boolean) {
  const row = some(OUTCOMES[test], proportion);
  const { entries } = some(rows, row);
  return v.strictObject({ ...entries, ...(otherwise && { otherwise: row }) }, or('section'));
}

const KNOWN_FIRST = v.strictObject(
  {
    pressure: v.exactOptional(v.picklist(OUTCOMES.pressure, or('pressure'))),
    fluid: v.exactOptional(v.picklist(OUTCOMES.fluid, or('fluid'))),
  },
  or('section'),
);

const costs = {
  minutes,
  risk: v.picklist(RISKS, or('risk')),
  at: v.picklist(STAGES, or('stage')),
  first: v.exactOptional(KNOWN_FIRST),
};
const reckoned = (test: TestWord) => {
  const shows = v.exactOptional(showing(test, CAUSES, false));
  return v.strictObject({ ...costs, shows }, or('section'));
};
const tabled = (test: TestWord, rows: readonly Row[]) => {
  return v.strictObject({ ...costs, shows: showing(test, rows, true) }, or('section'));
};

export const PRACTICE = v.strictObject(
  {
    'wrong in a hundred': each(SURENESSES, between(0, 50, 'under fifty')),
    'enough in a hundred': between(50, 100, 'over fifty'),
    'minutes to open': v.strictObject(
      { 'pan off': minutes, 'on the bench': minutes },
      or('section'),
    ),
    risks: each(RISKS, minutes),
    causes: each(CAUSES, proportion),
    tests: v.strictObject(
      {
        'under power': reckoned('under power'),
        coast: v.strictObject(costs, or('section')),
        fluid: tabled('fluid', CAUSES),
        pressure: tabled('pressure', CAUSES),
        stall: tabled('stall', [...CAUSES, ...GEAR_ROWS]),
        'air check': tabled('air check', ['device will not apply', 'device will not release']),
        'hand check': v.strictObject(costs, or('section')),
      },
      or('section'),
    ),
  },
  or('section'),
);
