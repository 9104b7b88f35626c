import { compare, fraction, type Rational, times } from '../../engine/linear/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';

/** Whether two pressures with their units, whose form has been checked, are within 5 %. */
export function likePressure(a: string, b: string): boolean {
  const [x, y] = [kpaOf(a), kpaOf(b)];
  const near = (p: Rational, q: Rational) => compare(times(p, fraction(105, 100)), q) >= 0;
  return near(x, y) && near(y, x);
}

function kpaOf(text: string): Rational {
  const pressure = quantityFrom(text, 'pressure');
  if (!pressure) throw new Error(`no pressure: ${text}`);
  return pressure.size;
}
