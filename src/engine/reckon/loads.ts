import {
  Base,
  type Extremes,
  extremes,
  type Form,
  given,
  type Int,
  plus,
  type Rational,
  type Row,
  times,
  ZERO,
} from '../linear/index.ts';
import { type Motion, willis } from '../motion/index.ts';
import { areIndependent } from '../proof/index.ts';
import { companyOf, type MemberName } from '../train/index.ts';
import { between, hull, isSpan, isZero, type Quantity } from './quantity.ts';
import { value } from './speeds.ts';
import { firstSign, loadsOf, type Verdict } from './verdict.ts';

/**
 * Torques of a train that turns a reluctant end, as far as statics settles them. Where
 * several devices could take one reaction, its span runs over every way of carrying the load
 * with as few of them as can.
 */
export interface Reactions {
  readonly given: readonly Quantity[];
  readonly reluctant: Rational;
  readonly devices: readonly Quantity[];
  readonly meshes: readonly Quantity[];
  /** In the order of `portsOf`. */
  readonly ports: readonly Quantity[];
}

/** Where a set (a company of sets that share planets) or a gear pair meets a body. */
export interface Port {
  readonly within: string;
  /** The name under which the set knows the body; planets are not ports. */
  readonly member: MemberName;
  readonly body: number;
  /** The torque on the body, as a form in the meshes' multipliers. */
  readonly torque: Form;
}

/** `slips` are the devices' slips on the answers' face: a one-way clutch that can slip is bare. */
export function reactionsOf(
  verdict: Verdict,
  slips: readonly Quantity[],
  ports: readonly Port[],
): Reactions {
  const settled = settledReactions(verdict, slips, ports);
  if (settled) return settled;
  const balance = new Balance(verdict, slips);
  const forms = [...balance.units(), ...ports.map((port) => port.torque)];
  const quantities = balance.quantities(forms);
  const { motion, question } = verdict;
  const meshes = quantities.slice(0, motion.meshes.length);
  const devices = quantities.slice(meshes.length, meshes.length + motion.devices.length);
  const held = meshes.length + devices.length;
  return {
    given: quantities.slice(held, held + question.given.length),
    reluctant: balance.reluctant,
    devices,
    meshes,
    ports: quantities.slice(held + question.given.length),
  };
}

// The certificate's torques, where no others balance: where the rows that can push are
// independent of one another.
function settledReactions(
  verdict: Verdict,
  slips: readonly Quantity[],
  ports: readonly Port[],
): Reactions | undefined {
  const { motion, posed } = verdict;
  const pushing = motion.devices.flatMap((_, d) => {
    return canPush(verdict, d, slips) ? [posed.deviceRow[d] as number] : [];
  });
  const { rows } = posed.programme;
  const active = [
    ...motion.base.rows,
    ...pushing.map((row) => rows[row] as Row),
    ...rows.slice(posed.firstGiven, posed.firstReluctant),
  ];
  if (!areIndependent(motion.columns, active)) return undefined;
  const loads = loadsOf(verdict);
  return { ...loads, ports: ports.map((port) => portTorque(port, loads.meshes)) };
}

/** What the meshes' multipliers come to at a port. */
export function portTorque({ torque }: Port, multipliers: readonly Rational[]): Rational {
  return torque.at.reduce((sum, mesh, k) => {
    const coef = torque.coef[k] as Int;
    return plus(sum, times(multipliers[mesh] as Rational, { num: coef, den: 1 }));
  }, ZERO);
}

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

/** Every port of a train, in the order of the file. */
export function portsOf(motion: Motion): Port[] {
  const { assembly, train } = motion;
  const planets = new Set(assembly.gearing.planets.map(({ member }) => assembly.bodyOf(member)));
  const ports = new Map<string, Port & { torque: { at: number[]; coef: Int[] } }>();
  motion.meshes.forEach((mesh, m) => {
    const within = companyOf(train, mesh.within);
    for (const [member, torque] of willis(mesh)) {
      const body = assembly.bodyOf(member) as number;
      if (planets.has(body)) continue;
      const key = `${body} ${within}`;
      const port = ports.get(key) ?? { within, member, body, torque: { at: [], coef: [] } };
      ports.set(key, port);
      const again = port.torque.at.indexOf(m); // two wheels of one body
      if (again < 0) {
        port.torque.at.push(m);
        port.torque.coef.push(torque);
      } else {
        port.torque.coef[again] = (port.torque.coef[again] as number) + torque;
      }
    }
  });
  return [...ports.values()];
}

/**
 * The balance of torques on every body as rows: columns are the meshes' multipliers, then the
 * devices' torques on their first members, then the torques at the given speeds.
 */
class Balance {
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
        terms[body]?.push([column, sign > 0 ? coef : -coef]);
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
    if (loose.length === 0) return bounds;
    const ways = this.ways(forms, loose, []);
    if (ways.length === 0) return bounds;
    return forms.map((_, k) => {
      const settled = ways
        .map((way) => way[k] as Quantity)
        .filter((q): q is Rational => !isSpan(q));
      return settled.length === ways.length ? hull(settled) : (bounds[k] as Quantity);
    });
  }

  // Every way to carry the load that leaves nothing unsettled once some devices carry nothing.
  // `without` grows in the order of the columns, so that each choice is made once.
  private ways(
    forms: readonly Form[],
    loose: readonly number[],
    without: readonly number[],
  ): Quantity[][] {
    const found: Quantity[][] = [];
    for (const column of loose) {
      if (column <= (without.at(-1) ?? -1) || found.length >= MOST_WAYS) continue;
      const less = [...without, column];
      const bounds = this.bounds(forms, less);
      if (bounds.length === 0) continue; // the load cannot be carried without them
      const still = this.shared.filter((c) => isSpan(bounds[c] as Quantity));
      if (still.length === 0) found.push(bounds);
      else found.push(...this.ways(forms, still, less));
    }
    return found;
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

// A gear has two or three ways; a train made to have thousands gets the bounds of these.
const MOST_WAYS = 64;
