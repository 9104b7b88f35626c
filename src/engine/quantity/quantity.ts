import { fraction, over, type Rational, times } from '../linear/index.ts';
import { type Dimension, NUMBER, UNITS, wordsOf } from './unit.ts';

/** A number with its unit as somebody wrote it: exact, however it was written. */
interface Quantity {
  /** In the dimension's own unit: µm, kPa, N or Nm. */
  readonly size: Rational;
  /** The last digit that was told, in the same unit, above 0: 10 (µm) for "0.42 mm". */
  readonly step: Rational;
  /** The unit in which it was written, by its plainest word. */
  readonly unit: string;
}

/**
 * Reads "0.42 mm", "0,42 mm", "17 thou", "1 3/16 in", "300 kPa", "12 lb·in", with a sign before it
 * or without. A bare number is of the unit `bare`; without one it is undefined, for nobody knows
 * what it is, as is all else.
 */
export function quantityFrom(
  text: string,
  dimension: Dimension,
  bare?: string,
): Quantity | undefined {
  const [, sign, number, word] = (text.length <= LONGEST && FORM.exec(text.trim())) || [];
  if (number === undefined) return undefined;
  const unit = UNITS[dimension].find(({ name, words }) => {
    return word === undefined ? name === bare : WHOLE.get(words)?.test(word);
  });
  if (!unit) return undefined;
  const { num, den } = exactly(number);
  const step = times(fraction(1, den), unit.size);
  return { size: times(fraction(sign === '-' ? -num : num), step), step, unit: unit.name };
}

/** A size in the dimension's own unit, told in another by its plainest word: kPa in psi. */
export function toldIn(size: Rational, dimension: Dimension, unit: string): Rational {
  const its = UNITS[dimension].find(({ name }) => name === unit);
  if (!its) throw new Error(`no unit of ${dimension}: ${unit}`);
  return over(size, its.size);
}

const LONGEST = 40;
const FORM = new RegExp(`^([+-]?)(${NUMBER})(?: ?([^0-9 ].*))?$`, 'u');
const WHOLE = new Map(
  Object.values(UNITS)
    .flat()
    .map((unit) => [unit.words, new RegExp(`^(?:${wordsOf(unit)})$`, 'iu')]),
);

function exactly(number: string): { readonly num: number; readonly den: number } {
  const [, whole = '0', top, bottom] = /^(?:(\d+) )?(\d+)\/(\d+)$/u.exec(number) ?? [];
  if (bottom !== undefined) {
    const den = Number(bottom);
    return { num: Number(whole) * den + Number(top), den };
  }
  const [integer = '', decimals = ''] = number.split(/[.,]/u);
  return { num: Number(integer + decimals), den: 10 ** decimals.length };
}
