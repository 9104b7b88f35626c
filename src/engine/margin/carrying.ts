import {
  add,
  Base,
  compare,
  entry,
  type Form,
  fraction,
  freedom,
  type Int,
  lcm,
  minus,
  multiply,
  negate,
  opposite,
  over,
  type Programme,
  type Rational,
  type Row,
  type Solution,
  solve,
  times,
  valueOf,
  type Vector,
  ZERO,
} from '../linear/index.ts';
import { doubtOf, prove, spansFreedom } from '../proof/index.ts';
import { canPush, type Quantity, type Verdict } from '../reckon/index.ts';
import type { Device, Way } from '../train/index.ts';
import { type Limit, NO_STRENGTH, type Strength, strengthNm } from './limit.ts';

/** The most that a gear can pass, and what lets go then. */
export interface Most {
  /** At the input; null where nothing limits it. */
  readonly torqueNm: Rational | null;
  readonly letsGo: readonly string[];
}

/**
 * A driving gear as a balance of torques that holds at any size: the meshes' multipliers, the
 * torques of the devices that can push on their first members, the torque of the input end and
 * that of the output end. All the ways to balance are found once, and proved to be all; each
 * question is then a small programme over them, with two bounds a device:
 * −anticlockwise ≤ λ ≤ clockwise.
 *
 * A device that slips in this gear's motion carries nothing, so the answers are about this gear
 * and not about the one into which the train may fall when a one-way clutch takes over.
 */
export class Carrying {
  /** The coordinates of the ways to balance; nothing is known of them yet. */
  private readonly base: Base;
  private readonly bounds: readonly Bound[];
  private readonly input: Form;
  private lastPrices: Vector | undefined;

  /** `push` is the way in which the input end pushes the train. */
  constructor(
    verdict: Verdict,
    slips: readonly Quantity[],
    push: 1 | -1,
    limits: ReadonlyMap<string, Limit>,
  ) {
    const { motion } = verdict;
    const pushing = motion.devices.filter((_, d) => canPush(verdict, d, slips));
    const first = motion.meshes.length;
    const { input, output } = motion.train;
    const forms: Form[] = [
      ...motion.meshes.map((_, m) => motion.base.rows[m] as Row),
      ...pushing.map(({ slip }) => slip),
      turned(motion.speedOf(input), push),
      motion.speedOf(output),
    ];
    const ways = balances(forms, motion.columns);
    this.base = new Base(ways.length, []);
    this.input = inWays(ways, forms.length - 2);
    this.bounds = pushing.flatMap(({ device }, k) => {
      return boundsOf(device, inWays(ways, first + k), limits.get(device.name));
    });
  }

  /** The most torque of the input end at a pressure. */
  most(pressureKpa: Rational): Most {
    const strengths = this.bounds.map(({ strength }) => strengthNm(strength, pressureKpa));
    // In so small a unit of torque that every strength is a whole number: then all numbers are
    // small ones.
    const unit = strengths.reduce((common: Int, { den }) => lcm(common, den), 1);
    const rows = this.bounds.map(({ torque }, r): Row => {
      const { num } = times(strengths[r] as Rational, { num: unit, den: 1 });
      return { ...turned(torque, -1), sense: '>=', right: negate(num) };
    });
    const { columns } = this.base;
    const programme = { columns, rows, minimise: turned(this.input, -1) };
    const solution = this.asBefore(programme) ?? this.solved(programme);
    if (solution.state !== 'optimal') return { torqueNm: null, letsGo: [] };
    const { point, prices } = solution;
    this.lastPrices = prices;
    const letting = this.bounds.filter(({ bare, torque }, r) => {
      if (bare) return false;
      if (prices.nums[r] !== 0) return true;
      // Where only the size of the load is free, all that stand at their bound let go.
      return columns === 1 && this.grows(torque) && stands(rows[r] as Row, point);
    });
    const letsGo = [...new Set(letting.map(({ device }) => device))];
    return { torqueNm: over(valueOf(this.input, point), { num: unit, den: 1 }), letsGo };
  }

  /** The least pressure at which the input end can have so much torque; null where none does. */
  // Strengths begin to rise at pressures of their own; between two of them every bound is linear
  // in the pressure, which is then one more column. What holds at a pressure holds above it, so
  // the search goes down from the highest of them, where it mostly ends.
  leastPressure(torqueNm: Rational): Rational | null {
    const starts = [ZERO, ...this.bounds.flatMap(({ strength }) => startOf(strength))]
      .toSorted((a, b) => compare(b, a))
      .filter((kpa, k, all) => k === 0 || compare(kpa, all[k - 1] as Rational) !== 0);
    let least: Rational | null = null;
    for (const start of starts) {
      const found = this.leastFrom(start, torqueNm);
      if (!found || (least && compare(found, least) > 0)) return least;
      if (compare(found, start) > 0) return found;
      least = found;
    }
    return least;
  }

  private leastFrom(start: Rational, torqueNm: Rational): Rational | undefined {
    const pressure = this.base.columns;
    const aim: Form = { at: [pressure], coef: [1] };
    const rows = [
      atLeast(this.input, torqueNm),
      atLeast(aim, start),
      ...this.bounds.map((bound) => risingRow(bound, pressure, start)),
    ];
    const solution = this.solved({ columns: pressure + 1, rows, minimise: aim });
    return solution.state === 'optimal' ? entry(solution.point, pressure) : undefined;
  }

  // Only the right sides change with the pressure, so the prices of one pressure bound the load
  // at every other; where the load that they promise meets every row, that is the answer, and
  // is proved like any other.
  private asBefore(programme: Programme): Extract<Solution, { state: 'optimal' }> | undefined {
    const prices = this.lastPrices;
    if (!prices || programme.columns !== 1) return undefined;
    const promise = programme.rows.reduce((sum: Int, { right }, r) => {
      return add(sum, multiply(right, prices.nums[r] as Int));
    }, 0);
    const { num, den } = fraction(promise, multiply(prices.den, programme.minimise.coef[0] as Int));
    const solution = { state: 'optimal', point: { nums: [num], den }, prices } as const;
    return doubtOf(programme, solution) === undefined ? solution : undefined;
  }

  private solved(programme: Programme): Solution {
    const solution = solve(programme, this.base);
    prove(programme, solution);
    return solution;
  }

  // Whether the torque grows as the load does, where one coordinate is all there is.
  private grows({ coef }: Form): boolean {
    return (coef[0] ?? 0) > 0 === (this.input.coef[0] ?? 0) > 0;
  }
}

/** torque ≤ strength. */
interface Bound {
  readonly device: string;
  /** What the device puts on its first member, one way or the other. */
  readonly torque: Form;
  readonly strength: Strength;
  /** The way in which a one-way clutch lets go by itself. */
  readonly bare: boolean;
}

// Every way in which the torques on each body add up to nothing.
function balances(forms: readonly Form[], bodies: number): readonly Vector[] {
  const sums = Array.from({ length: bodies }, () => ({ at: [] as number[], coef: [] as Int[] }));
  forms.forEach(({ at, coef }, column) => {
    at.forEach((body, k) => {
      sums[body]?.at.push(column);
      sums[body]?.coef.push(coef[k] as Int);
    });
  });
  const rows = sums.map((form): Row => ({ ...form, sense: '=', right: 0 }));
  const ways = freedom(forms.length, rows, new Base(forms.length, rows));
  if (!spansFreedom(forms.length, rows, ways)) throw new Error('a way to balance was missed');
  return ways;
}

// What a column of the balance comes to, where each way is taken so many times its denominator.
function inWays(ways: readonly Vector[], column: number): Form {
  const at = ways.flatMap(({ nums }, way) => (nums[column] === 0 ? [] : [way]));
  return { at, coef: at.map((way) => ways[way]?.nums[column] as Int) };
}

// A one-way clutch is bare one way, whatever is known of it; a torque that is always nothing
// needs no bound.
function boundsOf(device: Device, torque: Form, limit: Limit | undefined): Bound[] {
  if (torque.at.length === 0) return [];
  const bound = (sign: 1 | -1, way: Way): Bound[] => {
    const bare = device.kind === 'one-way' && device.stuck === undefined && device.lets !== way;
    const strength = bare ? NO_STRENGTH : limit?.[way];
    if (!strength) return [];
    return [{ device: device.name, torque: turned(torque, sign), strength, bare }];
  };
  return [...bound(1, 'clockwise'), ...bound(-1, 'anticlockwise')];
}

function turned({ at, coef }: Form, sign: 1 | -1): Form {
  return sign > 0 ? { at, coef } : { at, coef: coef.map(negate) };
}

function atLeast({ at, coef }: Form, { num, den }: Rational): Row {
  return { at, coef: coef.map((c) => multiply(c, den)), sense: '>=', right: num };
}

// Where one coordinate is all there is.
function stands({ coef, right }: Row, { nums, den }: Vector): boolean {
  return multiply(coef[0] as Int, nums[0] as Int) === multiply(right, den);
}

function startOf({ perKpaNm, fromKpa }: Strength): Rational[] {
  return perKpaNm.num === 0 ? [] : [fromKpa];
}

// rise · pressure − torque ≥ rise · from − fixed; no rise where it begins above `start`.
function risingRow({ torque, strength }: Bound, pressure: number, start: Rational): Row {
  const { fixedNm, perKpaNm, fromKpa } = strength;
  const against = turned(torque, -1);
  const rises = perKpaNm.num !== 0 && compare(fromKpa, start) <= 0;
  if (!rises) return atLeast(against, opposite(fixedNm));
  const { num, den } = perKpaNm;
  const right = times(minus(times(perKpaNm, fromKpa), fixedNm), { num: den, den: 1 });
  const coef = [...against.coef.map((c) => multiply(c, den)), num];
  return atLeast({ at: [...against.at, pressure], coef }, right);
}
