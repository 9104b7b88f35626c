import {
  add,
  Base,
  compare,
  entry,
  type LinearForm,
  fraction,
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
import { prove } from '../proof/index.ts';
import { pushersOf, type Quantity, type Ruling } from '../reckon/index.ts';
import type { Device, Way } from '../train/index.ts';
import type { Balances } from './balances.ts';
import { type Limit, NO_STRENGTH, type Pressure, type Strength } from './limit.ts';
import { Pieces } from './piece.ts';

/** The most that a gear can pass, and what slips then. */
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
  /** Whether the size of the load alone is free; then `most` names all that slip. */
  readonly alone: boolean;
  private readonly bounds: readonly Bound[];
  private readonly input: LinearForm;
  private readonly pieces: Pieces;

  /** `push` is the way in which the input end pushes the train. */
  constructor(
    ruling: Ruling,
    slips: ReadonlyMap<Device, Quantity>,
    push: 1 | -1,
    limits: ReadonlyMap<string, Limit>,
    balances: Balances,
  ) {
    const pushers = pushersOf(ruling, slips);
    const ways = balances.of(pushers);
    this.base = new Base(ways.count, []);
    this.alone = ways.count === 1;
    this.input = turned(ways.input, push);
    this.bounds = pushers.flatMap(({ device }, k) => {
      return boundsOf(device, ways.devices[k] as LinearForm, limits.get(device.name));
    });
    this.pieces = new Pieces(this.bounds.flatMap(({ strength }) => startOf(strength)));
  }

  /** The most torque of the input end at a pressure. */
  most(pressure: Pressure): Most {
    const known = this.pieces.at(pressure.kpa);
    if (known) return { torqueNm: this.barred(known.bound, pressure), letsGo: known.letsGo };
    const strengths = this.bounds.map(({ strength }) => pressure.of(strength));
    // In so small a unit of torque that every strength is a whole number: then all numbers are
    // small ones.
    const unit = strengths.reduce((common: Int, { den }) => lcm(common, den), 1);
    const rows = this.bounds.map(({ torque }, r): Row => {
      const { num } = times(strengths[r] as Rational, { num: unit, den: 1 });
      return { ...turned(torque, -1), sense: '>=', right: negate(num) };
    });
    const programme = { columns: this.base.columns, rows, minimise: turned(this.input, -1) };
    const solution = this.first(programme) ?? this.solved(programme);
    if (solution.state !== 'optimal') return { torqueNm: null, letsGo: [] };
    const { point, prices } = solution;
    const letting = this.bounds.filter(({ bare, torque }, r) => {
      if (bare) return false;
      if (prices.nums[r] !== 0) return true;
      // Where only the size of the load is free, all that stand at their bound slip.
      return this.alone && this.grows(torque) && stands(rows[r] as Row, point);
    });
    const letsGo = [...new Set(letting.map(({ device }) => device))];
    const bound = prices.nums.findIndex((price) => price !== 0);
    if (this.alone && bound >= 0) this.pieces.keep({ kpa: pressure.kpa, bound, letsGo });
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
    const aim: LinearForm = { at: [pressure], coef: [1] };
    const rows = [
      atLeast(this.input, torqueNm),
      atLeast(aim, start),
      ...this.bounds.map((bound) => risingRow(bound, pressure, start)),
    ];
    const solution = this.solved({ columns: pressure + 1, rows, minimise: aim });
    return solution.state === 'optimal' ? entry(solution.point, pressure) : undefined;
  }

  // The torque of the input end at which a bound bars more, where one coordinate is all there is.
  private barred(bound: number, pressure: Pressure): Rational {
    const { torque, strength } = this.bounds[bound] as Bound;
    const share = fraction(this.input.coef[0] as Int, torque.coef[0] as Int);
    return times(pressure.of(strength), share);
  }

  // Where only the size of the load is free, it grows until the first bound: no programme has to
  // be solved, and what is found is proved like any other answer.
  private first(programme: Programme): Solution | undefined {
    const { rows, minimise } = programme;
    const [outwards] = minimise.coef;
    if (!this.alone || outwards === undefined) return undefined;
    let barring: number | undefined;
    rows.forEach(({ coef: [coef = 0], right }, r) => {
      if (coef === 0 || coef > 0 !== outwards > 0) return;
      const least = barring === undefined ? undefined : (rows[barring] as Row);
      // right / coef is how far this row lets the load grow; the nearer to nothing, the sooner.
      if (least && !sooner(right, coef, least.right, least.coef[0] as Int)) return;
      barring = r;
    });
    if (barring === undefined) return undefined;
    const { coef, right } = rows[barring] as Row;
    const by = coef[0] as Int;
    const [den, sign] = by < 0 ? [negate(by), negate] : [by, (num: Int) => num];
    const nums = rows.map((_, r) => (r === barring ? sign(outwards) : 0));
    const solution: Solution = {
      state: 'optimal',
      point: { nums: [sign(right)], den },
      prices: { nums, den },
    };
    prove(programme, solution);
    return solution;
  }

  private solved(programme: Programme): Solution {
    const solution = solve(programme, this.base);
    prove(programme, solution);
    return solution;
  }

  // Whether the torque grows as the load does, where one coordinate is all there is.
  private grows({ coef }: LinearForm): boolean {
    return (coef[0] ?? 0) > 0 === (this.input.coef[0] ?? 0) > 0;
  }
}

/** torque ≤ strength. */
interface Bound {
  readonly device: string;
  /** What the device puts on its first member, one way or the other. */
  readonly torque: LinearForm;
  readonly strength: Strength;
  /** The way in which a one-way clutch over-runs by itself. */
  readonly bare: boolean;
}

// Whether a / b is nearer to nothing than c / d; all four ratios have one sign.
function sooner(a: Int, b: Int, c: Int, d: Int): boolean {
  const apart = add(multiply(sized(a), sized(d)), negate(multiply(sized(c), sized(b))));
  return apart < 0;
}

function sized(num: Int): Int {
  return num < 0 ? negate(num) : num;
}

// A one-way clutch is bare one way, whatever is known of it; a torque that is always nothing
// needs no bound.
function boundsOf(device: Device, torque: LinearForm, limit: Limit | undefined): Bound[] {
  if (torque.at.length === 0) return [];
  const bound = (sign: 1 | -1, way: Way): Bound[] => {
    const bare = device.kind === 'one-way' && device.stuck === undefined && device.lets !== way;
    const strength = bare ? NO_STRENGTH : limit?.[way];
    if (!strength) return [];
    return [{ device: device.name, torque: turned(torque, sign), strength, bare }];
  };
  return [...bound(1, 'clockwise'), ...bound(-1, 'anticlockwise')];
}

function turned({ at, coef }: LinearForm, sign: 1 | -1): LinearForm {
  return sign > 0 ? { at, coef } : { at, coef: coef.map(negate) };
}

function atLeast({ at, coef }: LinearForm, { num, den }: Rational): Row {
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
