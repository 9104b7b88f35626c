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
import { type Abreast, abreastOf, onlySign, partsOf } from './abreast.ts';
import { between, hull, isSpan, type Quantity } from './quantity.ts';
import { value } from './speeds.ts';
import { loadsOf, sourceOf, type Verdict } from './verdict.ts';

/**
 * The balance of torques on every body as rows: columns are the meshes' multipliers, then the
 * devices' torques on their first members, then the torques at the given speeds and on the tied members.
 */
export class Balance {
  readonly reluctant: Rational;
  private readonly columns: number;
  private readonly rows: Row[];
  private readonly shared: readonly number[]; // the columns of devices that stand for those that can carry
  private readonly abreast: readonly (readonly Abreast[])[];
  private readonly firstDevice: number;

  constructor(verdict: Verdict, slips: readonly Quantity[]) {
    const { motion, question } = verdict;
    this.reluctant = loadsOf(verdict).reluctant;
    const { tied = [] } = question;
    const firstGiven = motion.meshes.length + motion.devices.length;
    const firstTied = firstGiven + question.given.length;
    this.columns = firstTied + tied.length;
    const terms: [number, Int][][] = Array.from({ length: motion.columns }, () => []);
    const push = (form: Form, column: number, sign: 1 | -1 = 1) => {
      form.at.forEach((body, k) => {
        const coef = form.coef[k] as Int;
        terms[body]?.push([column, sign > 0 ? coef : negate(coef)]);
      });
    };
    motion.meshes.forEach((_, m) => push(motion.base.rows[m] as Row, m));
    const limits: Row[] = [];
    this.abreast = abreastOf(verdict, slips);
    this.firstDevice = motion.meshes.length;
    motion.devices.forEach(({ slip }, d) => {
      const column = this.firstDevice + d;
      push(slip, column);
      // Of several between the same bodies the first stands for all.
      const group = this.abreast.find(([first]) => first?.device === d);
      const sign = group ? onlySign(group) : 0;
      if (!group) limits.push({ at: [column], coef: [1], sense: '=', right: 0 });
      else if (sign) limits.push({ at: [column], coef: [sign], sense: '>=', right: 0 });
    });
    const source = tied.length > 0 ? sourceOf(question) : undefined;
    this.shared = [
      ...this.abreast.map(([first]) => this.firstDevice + (first?.device ?? 0)),
      ...tied.map((_, k) => firstTied + k),
    ];
    question.given.forEach(({ member }, k) => {
      if (k !== source) push(motion.speedOf(member), firstGiven + k);
    });
    tied.forEach((member, k) => push(motion.speedOf(member), firstTied + k));
    const load =
      question.reluctant === undefined ? undefined : motion.speedOf(question.reluctant).at[0];
    const resists = { num: -this.reluctant.num, den: this.reluctant.den };
    const isTied = source === question.given.length;
    const balanced = terms.map((body, column): Row => {
      const form = { at: body.map(([at]) => at), coef: body.map(([, coef]) => coef) };
      return given(form, column === load && !isTied ? resists : ZERO);
    });
    if (source !== undefined) {
      // All that is on the tied members is what the first of them is given, or resists with.
      const all = { at: tied.map((_, k) => firstTied + k), coef: tied.map(() => 1) };
      const from = { at: [...all.at, firstGiven + source], coef: [...all.coef, -1] };
      limits.push(isTied ? given(all, this.reluctant) : given(from, ZERO));
    }
    this.rows = [...balanced, ...limits];
  }

  // Each column by itself.
  private units(): Form[] {
    return Array.from({ length: this.columns }, (_, column) => ({ at: [column], coef: [1] }));
  }

  /** What forms of the columns come to; `units` come first. */
  quantities(forms: readonly Form[]): Quantity[] {
    const found = this.together([...this.units(), ...forms]);
    for (const group of this.abreast) {
      if (group.length < 2) continue;
      const all = found[this.firstDevice + (group[0]?.device ?? 0)] as Quantity;
      const parts = partsOf(group, all);
      group.forEach(({ device }, k) => (found[this.firstDevice + device] = parts[k] as Quantity));
    }
    return found;
  }

  // With what devices between the same bodies carry together on the first of them.
  private together(forms: readonly Form[]): Quantity[] {
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
