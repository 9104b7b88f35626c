import { compare, fraction, minus, over, type Rational, times } from '../../engine/linear/index.ts';
import type { Length } from '../length/index.ts';
import type { Limited } from './bounds.ts';
import type { GapRemark } from './remark.ts';

/**
 * A reading, of three or more, that stands alone, and would stand with the others if two of its
 * digits beside each other were exchanged: 1.14 among 1.40 and 1.41. To stand with them is to lie
 * within a quarter of what the limits allow, as in `unevenness`; a reading that was read twice
 * stands by itself. (The quarter is ours.)
 */
export function swappedDigits(places: readonly Length[], { least, most }: Limited): GapRemark[] {
  if (places.length < 3 || !least || !most) return [];
  const near = over(minus(most.um, least.um), fraction(4));
  const isEven = (all: readonly Rational[]) => compare(spreadOf(all), near) <= 0;
  if (isEven(places.map(({ um }) => um))) return [];
  return places.flatMap((read, i): GapRemark[] => {
    const others = places.filter((_, other) => other !== i).map(({ um }) => um);
    if (!isEven(others)) return [];
    const um = swaps(read).find((its) => isEven([...others, its]));
    return um ? [{ remark: 'digits swapped', read, meant: { ...read, um }, place: i + 1 }] : [];
  });
}

function spreadOf(all: readonly Rational[]): Rational {
  const sorted = all.toSorted(compare);
  return minus(sorted.at(-1) as Rational, sorted[0] as Rational);
}

// Whatever the digits say after two that stand beside each other were exchanged.
function swaps({ um, stepUm }: Length): Rational[] {
  const { num, den } = over(um, stepUm);
  if (BigInt(den) !== 1n || BigInt(num) < 0n) return [];
  const digits = [...`${num}`];
  return digits.slice(1).map((_, i) => {
    const its = digits.toSpliced(i, 2, digits[i + 1] ?? '', digits[i] ?? '').join('');
    return times(fraction(Number(its)), stepUm);
  });
}
