import * as v from 'valibot';
import { formOf } from '../quantity/index.ts';
import type { Expected } from '../yaml/index.ts';

// Single values of a train file. The message of a definition is what was expected.

/** The message of a definition. */
export const or = (what: Expected) => what;

export const text = (description: string) =>
  v.pipe(
    v.string(or('text')),
    v.regex(/^(?:[^\p{Cc}\p{Cs}]|[\t\n])*$/u, or('text')),
    v.description(description),
  );

/** A text that goes on one line of a page. */
export const note = (description: string) =>
  v.pipe(
    v.string(or('note')),
    v.regex(/^[^\p{Cc}\p{Cs}\p{Zl}\p{Zp}]{1,200}$/u, or('note')),
    v.description(description),
  );

/** A length with its unit, without a sign. */
export const length = (description: string) =>
  v.pipe(v.string(or('length')), v.regex(LENGTH, or('length')), v.description(description));
const LENGTH = formOf('length');

/** A pressure with its unit. */
export const pressure = (description: string) =>
  v.pipe(v.string(or('air')), v.regex(PRESSURE, or('air')), v.description(description));
const PRESSURE = formOf('pressure');

/** A torque with its unit. */
export const torque = (description: string) =>
  v.pipe(v.string(or('torque')), v.regex(TORQUE, or('torque')), v.description(description));
const TORQUE = formOf('torque');

/** A force with its unit. */
export const force = (description: string) =>
  v.pipe(v.string(or('force')), v.regex(FORCE, or('force')), v.description(description));
const FORCE = formOf('force');

/** A volume with its unit. */
export const volume = (description: string) =>
  v.pipe(v.string(or('volume')), v.regex(VOLUME, or('volume')), v.description(description));
const VOLUME = /^[0-9]{1,3}(?:[.,][0-9]{1,2})? ?(?:l|L|qt|pt)$/u;

const whole = (what: Expected, most: number, description: string) =>
  v.pipe(
    v.number(what),
    v.integer(what),
    v.minValue(1, what),
    v.maxValue(most, what),
    v.description(description),
  );
export const teeth = (of: string) =>
  whole('teeth', 1_000_000, `Teeth of ${of}: a whole number from 1.`);
export const count = (of: string) => whole('count', 100, `How many ${of}: a whole number from 1.`);

/** Seen from the input end. */
export const WAY = v.picklist(['clockwise', 'anticlockwise'], or('way'));
