import * as v from 'valibot';
import type { Expected } from '../yaml/index.ts';
import {
  CAUSES,
  GEAR_ROWS,
  KINDS,
  OUTCOMES,
  RISKS,
  STAGES,
  SURENESSES,
  TOOLS,
} from './experience.ts';
import type { ExperienceRow, TestWord } from './experience.ts';

// The experience file, defined once. The message of a definition is what was expected.
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

const ROWS: readonly ExperienceRow[] = [...CAUSES, ...KINDS, ...GEAR_ROWS];

// What a test shows where mechanics do not answer.
function showing(test: TestWord) {
  const row = some(OUTCOMES[test], proportion);
  const { entries } = some(ROWS, row);
  return v.strictObject({ ...entries, otherwise: row }, or('section'));
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
  with: v.picklist(TOOLS, or('tool')),
  first: v.exactOptional(KNOWN_FIRST),
  mends: v.exactOptional(v.boolean(or('yes or no'))),
};
const tabled = (test: TestWord) => {
  return v.strictObject({ ...costs, shows: showing(test) }, or('section'));
};

export const EXPERIENCE = v.strictObject(
  {
    'wrong in a hundred': each(SURENESSES, between(0, 50, 'under fifty')),
    'enough in a hundred': between(50, 100, 'over fifty'),
    'minutes to open': v.strictObject(
      { 'pan off': minutes, 'on the bench': minutes },
      or('section'),
    ),
    risks: each(RISKS, minutes),
    causes: each(CAUSES, proportion),
    kinds: some(CAUSES, some(KINDS, proportion)),
    tests: v.strictObject(
      {
        'under power': v.strictObject(costs, or('section')),
        coast: v.strictObject(costs, or('section')),
        engagement: tabled('engagement'),
        shift: tabled('shift'),
        noise: tabled('noise'),
        fluid: tabled('fluid'),
        codes: tabled('codes'),
        filter: tabled('filter'),
        selector: tabled('selector'),
        'end play': tabled('end play'),
        pressure: tabled('pressure'),
        'device pressure': tabled('device pressure'),
        'stray pressure': tabled('stray pressure'),
        stall: tabled('stall'),
        'band check': tabled('band check'),
        'air check': tabled('air check'),
        'hand check': v.strictObject(costs, or('section')),
        'slip log': v.strictObject(costs, or('section')),
        'manual shift': tabled('manual shift'),
        pan: tabled('pan'),
        'valve body': tabled('valve body'),
        'seal rings': tabled('seal rings'),
        'build record': tabled('build record'),
        engine: tabled('engine'),
        converter: tabled('converter'),
        pump: v.exactOptional(tabled('pump')),
        seals: v.exactOptional(tabled('seals')),
        'one-way check': v.exactOptional(tabled('one-way check')),
        inspection: tabled('inspection'),
      },
      or('section'),
    ),
  },
  or('section'),
);
