import { compare, fraction, fromText, type Rational, times } from '../../engine/linear/index.ts';

// The pound-force per square inch, from the pound of 0.45359237 kg, standard gravity and the
// inch of 25.4 mm; to seven figures.
const KPA = { kPa: fraction(1), bar: fraction(100), psi: fraction(6894757, 1_000_000) } as const;

/** Whether two pressures with their units, whose form has been checked, are within 5 %. */
export function likePressure(a: string, b: string): boolean {
  const [x, y] = [kpaOf(a), kpaOf(b)];
  const near = (p: Rational, q: Rational) => compare(times(p, fraction(105, 100)), q) >= 0;
  return near(x, y) && near(y, x);
}

function kpaOf(text: string): Rational {
  const [, digits = '', unit = ''] = /^([\d.,]+) ?(kPa|bar|psi)$/u.exec(text) ?? [];
  const value = fromText(digits.replace(',', '.'));
  if (!value) throw new Error(`no pressure: ${text}`);
  return times(value, KPA[unit as keyof typeof KPA]);
}
