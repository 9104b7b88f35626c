import {
  Base,
  type Extremes,
  extremes,
  type Form,
  given,
  type Int,
  negate,
  type Rational,
  type Row,
  ZERO,
} from '../linear/index.ts';
import { between, hull, isSpan, isZero, type Quantity } from './quantity.ts';
import { value } from './speeds.ts';
import { firstSign, loadsOf, type Verdict } from './verdict.ts';

/** Whether a device can push: it is on, and its members surely do not turn against each other. */
export function canPush(
  { motion, posed }: Verdict,
  device: number,
  slips: readonly Quantity[],
): boolean {
  const there = posed.deviceRow[device] !== undefined;
  const apart = motion.devices[device]?.slip.at.length !== 0;
  return there && apart && isZero(slips[device] as Quantity);
}

/**
 * The balance of torques on every body as rows: columns are the meshes' multipliers, then the
 * devices' torques on their first members, then the torques at the given speeds.
 */
export class Balance {
  readonly reluctant: Rational;
  private readonly columns: number;
  private readonly rows: Row[];
  private readonly shared: readonly number[]; // the columns of devices that can carry

  constructor(verdict: Verdict, slips: readonly Quantity[]) {
    const { motion, posed, question } = verdict;
    this.reluctant = loadsOf(verdict).reluctant;
    this.columns = motion.meshes.length + motion.devices.length + question.given.length;
    const terms: [number, Int][][] = Array.from({ length: motion.columns }, () => []);
    const push = (form: Form, column: number, sign: 1 | -1 = 1) => {
      form.at.forEach((body, k) => {
        const coef = form.coef[k] as Int;
        terms[body]?.push([column, sign > 0 ? coef : negate(coef)]);
      });
    };
    motion.meshes.forEach((_, m) => push(motion.base.rows[m] as Row, m));
    const limits: Row[] = [];
    const shared: number[] = [];
    motion.devices.forEach(({ slip }, d) => {
      const column = motion.meshes.length + d;
      push(slip, column);
      if (!canPush(verdict, d, slips)) {
        limits.push({ at: [column], coef: [1], sense: '=', right: 0 });
        return;
      }
      shared.push(column);
      const { sense } = posed.programme.rows[posed.deviceRow[d] as number] as Row;
      const sign = firstSign(motion, posed, d);
      if (sense === '>=') limits.push({ at: [column], coef: [sign], sense, right: 0 });
    });
    this.shared = shared;
    question.given.forEach(({ member }, k) => {
      push(motion.speedOf(member), motion.meshes.length + motion.devices.length + k);
    });
    const load =
      question.reluctant === undefined ? undefined : motion.speedOf(question.reluctant).at[0];
    const balanced = terms.map((body, column): Row => {
      const form = { at: body.map(([at]) => at), coef: body.map(([, coef]) => coef) };
      const torque = column === load ? { num: -this.reluctant.num, den: this.reluctant.den } : ZERO;
      return given(form, torque);
    });
    this.rows = [...balanced, ...limits];
  }

  /** Each column by itself. */
  units(): Form[] {
    return Array.from({ length: this.columns }, (_, column) => ({ at: [column], coef: [1] }));
  }

  quantities(forms: readonly Form[]): Quantity[] {
    const bounds = this.bounds(forms, []);
    const loose = this.shared.filter((column) => isSpan(bounds[column] as Quantity));
    const ways = loose.length > MOST_LOOSE ? [] : this.ways(forms, loose, []);
    if (ways.length === 0) return bounds;
    return forms.map((_, k) => {
      const settled = ways.map((way) => way[k] as Quantity);
      return settled.some(isSpan) ? (bounds[k] as Quantity) : hull(settled as Rational[]);
    });
  }

  // Every way to carry the load that leaves nothing unsettled once some devices carry nothing.
  // `without` grows in the order of the columns, so that each choice is made once.
  private ways(
    forms: readonly Form[],
    loose: readonly number[],
    without: readonly number[],
  ): Quantity[][] {
    return loose.flatMap((column) => {
      if (column <= (without.at(-1) ?? -1)) return [];
      const less = [...without, column];
      const bounds = this.bounds(forms, less);
      if (bounds.length === 0) return []; // the load cannot be carried without them
      const still = this.shared.filter((c) => isSpan(bounds[c] as Quantity));
      return still.length === 0 ? [bounds] : this.ways(forms, still, less);
    });
  }

  // Least and greatest of each form; nothing where the load cannot be carried.
  private bounds(forms: readonly Form[], without: readonly number[]): Quantity[] {
    const none = without.map((column): Row => ({ at: [column], coef: [1], sense: '=', right: 0 }));
    const found: Extremes[] = extremes(this.columns, [...this.rows, ...none], forms, this.base);
    if (found[0]?.least.solution.state === 'infeasible') return [];
    return found.map(({ least, greatest }) => between(value(least, 1), value(greatest, -1)));
  }

  private get base(): Base {
    return new Base(this.columns, []);
  }
}

// Two or three devices share a reaction; where more than this many do, there are hundreds of
// ways, and the bounds are those of statics alone.
const MOST_LOOSE = 6;
