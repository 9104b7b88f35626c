import { fraction, ONE, over, type Rational, times } from '../linear/index.ts';

/** What is measured. Sizes are told in micrometres, kilopascals, newtons and newton metres. */
export type Dimension = 'length' | 'pressure' | 'force' | 'torque';

export interface Unit {
  readonly name: string;
  /** Its words as a pattern; ~ is a dot, a hyphen, a blank or nothing. */
  readonly words: string;
  readonly size: Rational;
}

// Exact by definition: the inch is 25.4 mm, the pound 0.45359237 kg, standard gravity 9.80665 m/s².
const INCH_UM = fraction(25_400);
const KGF_N = fraction(980_665, 100_000);
const LBF_N = times(KGF_N, fraction(45_359_237, 100_000_000));
const INCH_M = over(INCH_UM, fraction(1_000_000));
const FOOT_M = times(INCH_M, fraction(12));
const PSI_KPA = over(LBF_N, times(fraction(1000), times(INCH_M, INCH_M)));

/** Of two units whose words begin alike the longer stands first. */
export const UNITS: Readonly<Record<Dimension, readonly Unit[]>> = {
  length: [
    { name: 'mm', words: 'mm', size: fraction(1000) },
    // The micro sign, and the Greek letter.
    { name: 'um', words: '[uµμ]m', size: ONE },
    { name: 'in', words: 'inches|inch|in|"', size: INCH_UM },
    { name: 'thou', words: 'thou|thousandths?|mil', size: over(INCH_UM, fraction(1000)) },
  ],
  pressure: [
    { name: 'kPa', words: 'kPa', size: ONE },
    { name: 'MPa', words: 'MPa', size: fraction(1000) },
    { name: 'mbar', words: 'mbar', size: fraction(1, 10) },
    { name: 'bar', words: 'bar', size: fraction(100) },
    { name: 'psi', words: 'psi', size: PSI_KPA },
    { name: 'kgf/cm2', words: '(?:kgf?|kp)/cm[2²]', size: times(KGF_N, fraction(10)) },
  ],
  force: [
    { name: 'N', words: 'N', size: ONE },
    { name: 'lbf', words: 'lbf?|lbs', size: LBF_N },
    { name: 'kgf', words: 'kgf?|kp', size: KGF_N },
  ],
  torque: [
    { name: 'Nm', words: 'N~m', size: ONE },
    { name: 'Ncm', words: 'N~cm', size: fraction(1, 100) },
    { name: 'lbf ft', words: 'lbf?~ft|ft~lb[fs]?', size: times(LBF_N, FOOT_M) },
    { name: 'lbf in', words: 'lbf?~in|in~lb[fs]?', size: times(LBF_N, INCH_M) },
    { name: 'kgf m', words: '(?:kgf?|kp)~m', size: KGF_N },
    { name: 'kgf cm', words: '(?:kgf?|kp)~cm', size: over(KGF_N, fraction(100)) },
  ],
};

/** The words of a unit as a regular expression's source. */
export function wordsOf({ words }: Unit): string {
  return words.replaceAll('~', String.raw`[ .·\-]?`);
}

/** "0.42", "0,42", "1/64", "1 3/16": seven digits before the point, six behind it. */
const FRACTION = '(?:[0-9]{1,4} )?[0-9]{1,4}/[1-9][0-9]{0,3}';
export const NUMBER = `(?:${FRACTION}|[0-9]{1,7}(?:[.,][0-9]{1,6})?)`;

/** What a file may write of a dimension: a number without a sign, and its unit. */
export function formOf(dimension: Dimension): RegExp {
  const words = UNITS[dimension].map(wordsOf).join('|');
  return new RegExp(`^${NUMBER} ?(?:${words})$`, 'u');
}
