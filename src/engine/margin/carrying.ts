import type { State } from '../flow/index.ts';
import {
  Base,
  compare,
  entry,
  type Form,
  type Int,
  minus,
  multiply,
  negate,
  opposite,
  type Programme,
  type Rational,
  type Row,
  type Solution,
  solve,
  times,
  ZERO,
} from '../linear/index.ts';
import { prove } from '../proof/index.ts';
import { canPush, type Quantity, type Verdict } from '../reckon/index.ts';
import type { Device, Way } from '../train/index.ts';
import { type Limit, NO_STRENGTH, type Strength, strengthNm } from './limit.ts';

/** The most that a gear can pass, and what lets go then. */
export interface Most {
  /** At the input; null where nothing limits it. */
  readonly torqueNm: Rational | null;
  readonly letsGo: readonly string[];
}

/** sign · λ ≤ strength, for the torque λ in a column. */
interface Bound {
  readonly device: string;
  readonly column: number;
  readonly sign: 1 | -1;
  readonly strength: Strength;
  /** The way in which a one-way clutch lets go by itself. */
  readonly bare: boolean;
}

/**
 * A driving gear as a balance of torques that holds at any size: columns are the meshes'
 * multipliers, the torques of the devices that can push on their first members, the torque of
 * the input end and that of the output end. It is solved once; each question then adds two
 * bounds a device: −anticlockwise ≤ λ ≤ clockwise.
 *
 * A device that slips in this gear's motion carries nothing, so the answers are about this gear
 * and not about the one into which the train may fall when a one-way clutch takes over.
 */
export class Carrying {
  readonly state: State;
  private readonly base: Base;
  private readonly bounds: readonly Bound[];
  private readonly input: Form;

  /** `torque` is the way in which the input end pushes the train. */
  constructor(
    state: State,
    verdict: Verdict,
    slips: readonly Quantity[],
    torque: 1 | -1,
    limits: ReadonlyMap<string, Limit>,
  ) {
    this.state = state;
    const { motion } = verdict;
    const pushing = motion.devices.filter((_, d) => canPush(verdict, d, slips));
    const first = motion.meshes.length;
    const { input, output } = motion.train;
    const forms: Form[] = [
      ...motion.meshes.map((_, m) => motion.base.rows[m] as Row),
      ...pushing.map(({ slip }) => slip),
      turned(motion.speedOf(input), torque),
      motion.speedOf(output),
    ];
    this.base = new Base(forms.length, balanceOf(forms, motion.columns));
    this.input = { at: [forms.length - 2], coef: [1] };
    this.bounds = pushing.flatMap(({ device }, k) => boundsOf(device, first + k, limits));
  }

  /** The most torque of the input end at a pressure. */
  most(pressureKpa: Rational): Most {
    const bounds = this.bounds.map(({ column, sign, strength }) => {
      const most = strengthNm(strength, pressureKpa);
      return atLeast({ at: [column], coef: [-sign] }, opposite(most));
    });
    const { columns } = this.base;
    const rows = [...this.base.rows, ...bounds];
    const solution = this.solved({ columns, rows, minimise: turned(this.input, -1) });
    if (solution.state !== 'optimal') return { torqueNm: null, letsGo: [] };
    const torqueNm = entry(solution.point, this.input.at[0] as number);
    // Where nothing but the size of the load is free, all that stand at their bound let go.
    const alone = this.base.free.length === 1;
    const letting = this.bounds.filter(({ bare }, r) => {
      const priced = solution.prices.nums[this.base.rows.length + r] !== 0;
      return !bare && (priced || (alone && this.reached(bounds[r] as Row, solution.point)));
    });
    return { torqueNm, letsGo: [...new Set(letting.map(({ device }) => device))] };
  }

  /** The least pressure at which the input end can have so much torque; null where none does. */
  // Strengths begin to rise at pressures of their own; between two of them every bound is linear
  // in the pressure, which is then one more column.
  leastPressure(torqueNm: Rational): Rational | null {
    const starts = [ZERO, ...this.bounds.flatMap(({ strength }) => startOf(strength))]
      .toSorted(compare)
      .filter((kpa, k, all) => k === 0 || compare(kpa, all[k - 1] as Rational) !== 0);
    for (const [k, start] of starts.entries()) {
      const least = this.leastFrom(start, torqueNm);
      const end = starts[k + 1];
      if (least && (!end || compare(least, end) <= 0)) return least;
    }
    return null;
  }

  private leastFrom(start: Rational, torqueNm: Rational): Rational | undefined {
    const pressure = this.base.columns;
    const aim: Form = { at: [pressure], coef: [1] };
    const rows = [
      ...this.base.rows,
      atLeast(this.input, torqueNm),
      atLeast(aim, start),
      ...this.bounds.map((bound) => risingRow(bound, pressure, start)),
    ];
    const solution = this.solved({ columns: pressure + 1, rows, minimise: aim });
    return solution.state === 'optimal' ? entry(solution.point, pressure) : undefined;
  }

  private solved(programme: Programme): Solution {
    const solution = solve(programme, this.base);
    prove(programme, solution);
    return solution;
  }

  // Whether the load stands against the bound, and would press on it if it grew.
  private reached(row: Row, point: { readonly nums: readonly Int[]; readonly den: Int }): boolean {
    const column = row.at[0] as number;
    const left = multiply(row.coef[0] as Int, point.nums[column] as Int);
    if (left !== multiply(row.right, point.den)) return false;
    const grows = this.base.reduce(row).coef[0] as Int;
    const load = this.base.reduce(this.input).coef[0] as Int;
    return grows !== 0 && grows > 0 !== load > 0;
  }
}

// The torques on each body add up to nothing.
function balanceOf(forms: readonly Form[], bodies: number): Row[] {
  const rows = Array.from({ length: bodies }, () => ({ at: [] as number[], coef: [] as Int[] }));
  forms.forEach(({ at, coef }, column) => {
    at.forEach((body, k) => {
      rows[body]?.at.push(column);
      rows[body]?.coef.push(coef[k] as Int);
    });
  });
  return rows.map((form) => ({ ...form, sense: '=', right: 0 }));
}

function turned({ at, coef }: Form, sign: 1 | -1): Form {
  return sign > 0 ? { at, coef } : { at, coef: coef.map(negate) };
}

function atLeast({ at, coef }: Form, { num, den }: Rational): Row {
  return { at, coef: coef.map((c) => multiply(c, den)), sense: '>=', right: num };
}

function startOf({ perKpaNm, fromKpa }: Strength): Rational[] {
  return perKpaNm.num === 0 ? [] : [fromKpa];
}

// A one-way clutch is bare one way, whatever is known of it.
function boundsOf(device: Device, column: number, limits: ReadonlyMap<string, Limit>): Bound[] {
  const { name } = device;
  const limit = limits.get(name);
  const bound = (sign: 1 | -1, way: Way): Bound[] => {
    const bare = device.kind === 'one-way' && device.stuck === undefined && device.lets !== way;
    const strength = bare ? NO_STRENGTH : limit?.[way];
    return strength ? [{ device: name, column, sign, strength, bare }] : [];
  };
  return [...bound(1, 'clockwise'), ...bound(-1, 'anticlockwise')];
}

// rise · pressure − sign · λ ≥ rise · from − fixed; no rise where it begins above `start`.
function risingRow({ column, sign, strength }: Bound, pressure: number, start: Rational): Row {
  const { fixedNm, perKpaNm, fromKpa } = strength;
  const rises = perKpaNm.num !== 0 && compare(fromKpa, start) <= 0;
  if (!rises) return atLeast({ at: [column], coef: [-sign] }, opposite(fixedNm));
  const { num, den } = perKpaNm;
  const right = times(minus(times(perKpaNm, fromKpa), fixedNm), { num: den, den: 1 });
  return atLeast({ at: [column, pressure], coef: [sign > 0 ? negate(den) : den, num] }, right);
}
