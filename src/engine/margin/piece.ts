import { compare, type Rational } from '../linear/index.ts';

/** What was found at one pressure: which bound bars more, and all that slip. */
export interface Found {
  readonly kpa: Rational;
  /** The bound, by its number. */
  readonly bound: number;
  readonly letsGo: readonly string[];
}

/**
 * What is known of a gear whose load alone is free. The most that it passes is then the least of
 * what each bound allows, and between two pressures at which strengths begin to rise, each of
 * these is a straight line. So a bound that bars more at two pressures bars more between them:
 * every other line lies above its line at both ends, and straight lines do not dip. And what lets
 * go with it at both ends does so between them; what does so at one end only, at no other.
 */
export class Pieces {
  private readonly starts: readonly Rational[];
  private readonly found: Found[] = [];

  /** `starts`: where strengths begin to rise. */
  constructor(starts: readonly Rational[]) {
    this.starts = starts;
  }

  /** What holds at a pressure, if what is known settles it. */
  at(kpa: Rational): Omit<Found, 'kpa'> | undefined {
    const above = this.found.findIndex((one) => compare(one.kpa, kpa) >= 0);
    const [low, high] = [this.found[above - 1], this.found[above]];
    if (high && compare(high.kpa, kpa) === 0) return high;
    if (!low || !high || low.bound !== high.bound) return undefined;
    const bent = this.starts.some((start) => {
      return compare(low.kpa, start) < 0 && compare(start, high.kpa) < 0;
    });
    if (bent) return undefined;
    return { bound: low.bound, letsGo: low.letsGo.filter((one) => high.letsGo.includes(one)) };
  }

  keep(found: Found): void {
    const above = this.found.findIndex(({ kpa }) => compare(kpa, found.kpa) > 0);
    this.found.splice(above < 0 ? this.found.length : above, 0, found);
  }
}

/** All numbers below a count, both ends first, then what lies in the middle of a gap. */
export function inHalves(count: number): number[] {
  const order = [...new Set(count > 0 ? [0, count - 1] : [])];
  const gaps: (readonly [low: number, high: number])[] = [[0, count - 1]];
  for (let gap = gaps.shift(); gap; gap = gaps.shift()) {
    const [low, high] = gap;
    if (high - low < 2) continue;
    const middle = (low + high) >> 1;
    order.push(middle);
    gaps.push([low, middle], [middle, high]);
  }
  return order;
}
