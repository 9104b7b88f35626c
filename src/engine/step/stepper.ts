import type { Inertia } from '../inertia/index.ts';
import type { Motion } from '../motion/index.ts';
import type { MemberName } from '../train/index.ts';
import { ExactPivots } from './exact.ts';
import { BoxedPivots, GRIPS, LEAST, MOST } from './boxed.ts';
import { type Coupling, couplingOf, dot } from './coupling.ts';
import { inverseOf } from './inverse.ts';

/**
 * A train that moves in time, a step of h seconds after the other. Speeds are rad/s, torques N·m,
 * clockwise positive; all begins at rest.
 *
 * A step minimises ½ vᵀMv − (Mv₀ + hτ)ᵀv + h Σ max(C⁺σ, −C⁻σ) over the speeds v that the meshes
 * leave free, σ the slip of each friction device, under σ ≥ 0 for each one-way clutch: what grips
 * does not slip, what slips takes all that its capacity gives, and no step makes energy
 * (J. J. Moreau's implicit scheme for dry friction, from memory). Where several devices share a
 * reaction the speeds are settled and their torques are not: what is told is one way to share it.
 *
 * The state that held in the step before is tried first and checked; only where it fails do
 * `BoxedPivots` find another. A step that keeps its state allocates nothing.
 */
export class Stepper {
  /** What each device can take, in the train's order (N·m), as it drags its first member clockwise. */
  readonly pushing: Float64Array;
  /** The same, anticlockwise: a band's differs. A one-way clutch holds by its own way alone. */
  readonly pulling: Float64Array;
  /** How much more a device takes while it grips than while it slips; 1 at first. */
  readonly sticking: Float64Array;
  /** The torque on each port, in the order given (N·m). */
  readonly torque: Float64Array;
  /** Since the start (J): the work of the ports, the heat in each device, and the steps' own loss. */
  readonly heat: Float64Array;
  work = 0;
  loss = 0;

  private exact?: ExactPivots;
  private readonly coupling: Coupling;
  private readonly u: Float64Array;
  private readonly was: Float64Array;
  private readonly slip: Float64Array;
  private readonly impulse: Float64Array;
  private readonly least: Float64Array;
  private readonly most: Float64Array;
  private readonly unhindered: Float64Array;
  private readonly state: Uint8Array;
  private readonly oneWay: Int8Array; // 1 where the slip's sign is turned, −1 where not, 0: friction
  private readonly ports: Float64Array;
  private readonly pivots: BoxedPivots;
  private readonly grips = new Map<string, Grip>();
  private grip: Grip;
  private readonly devices: number;
  private lastH = 1;

  /** `ports`: the members on which torques act. Throws where some motion has no inertia. */
  constructor(
    motion: Motion,
    inertias: ReadonlyMap<MemberName, Inertia>,
    ports: readonly MemberName[],
  ) {
    this.coupling = couplingOf(motion, inertias);
    const { free } = this.coupling;
    this.devices = motion.devices.length;
    const each = () => new Float64Array(this.devices);
    [this.pushing, this.pulling, this.heat] = [each(), each(), each()];
    [this.slip, this.impulse, this.unhindered] = [each(), each(), each()];
    [this.least, this.most] = [each(), each()];
    this.sticking = each().fill(1);
    this.state = new Uint8Array(this.devices);
    this.oneWay = Int8Array.from(motion.devices, ({ device }) => {
      return device.kind !== 'one-way' ? 0 : device.lets === 'clockwise' ? 1 : -1;
    });
    for (const [k, way] of this.oneWay.entries()) {
      if (way !== 0) this.pushing[k] = this.pulling[k] = Infinity;
    }
    this.u = new Float64Array(free);
    this.was = new Float64Array(free);
    this.torque = new Float64Array(ports.length);
    this.ports = Float64Array.from(ports.flatMap((port) => this.coupling.speedOf(port)));
    this.pivots = new BoxedPivots(this.devices);
    this.grip = this.gripOf() as Grip;
  }

  /**
   * Starts anew with members at these speeds (rad/s) and the others as they move with the least
   * energy. Throws a RangeError where the meshes settle one of them by the others.
   */
  start(speeds: ReadonlyMap<MemberName, number>): void {
    const rows = [...speeds.keys()].map((member) => this.coupling.speedOf(member));
    const own = rows.flatMap((row) => rows.map((other) => dot(row, other)));
    const back = inverseOf(Float64Array.from(own), rows.length);
    if (!back)
      throw new RangeError(`given speeds that hang together: ${[...speeds.keys()].join()}`);
    const given = [...speeds.values()];
    const pushes = given.map((_, k) => dot(given, back.subarray(k * rows.length)));
    for (let i = 0; i < this.u.length; i++) {
      this.u[i] = rows.reduce((sum, row, k) => sum + (row[i] ?? 0) * (pushes[k] ?? 0), 0);
    }
    this.slipsOf(this.u, this.slip);
    this.state.fill(LEAST);
    this.grip = this.gripOf() as Grip;
    this.heat.fill(0);
    [this.work, this.loss] = [0, 0];
  }

  /** One step of `h` seconds with the torques and capacities as they stand now. */
  step(h: number): void {
    const { u, was, unhindered, devices } = this;
    const { free, slips } = this.coupling;
    this.lastH = h;
    was.set(u);
    this.bound(h);
    for (let p = 0; p < this.torque.length; p++) {
      const push = h * (this.torque[p] as number);
      for (let i = 0; i < free; i++) {
        u[i] = (u[i] as number) + push * (this.ports[p * free + i] as number);
      }
    }
    this.slipsOf(u, unhindered);
    if (!this.settle(NEAR)) this.find();
    for (let k = 0; k < devices; k++) {
      const by = this.impulse[k] as number;
      if (by === 0) continue;
      for (let i = 0; i < free; i++) {
        u[i] = (u[i] as number) - by * (slips[k * free + i] as number);
      }
    }
    this.slipsOf(u, this.slip);
    this.account(h);
  }

  /** The speed of a member, rad/s. */
  speed(member: MemberName): number {
    return dot(this.coupling.speedOf(member), this.u);
  }

  /** The slip of the k-th device, first member less second, rad/s. */
  slipOf(k: number): number {
    const slip = this.slip[k] as number;
    return this.oneWay[k] === 1 ? 0 - slip : slip;
  }

  /** The torque of the k-th device on its first member over the last step, N·m. */
  torqueOf(k: number): number {
    const torque = (this.impulse[k] as number) / this.lastH;
    return this.oneWay[k] === 1 ? torque : 0 - torque;
  }

  /** What a unit of impulse on the k-th device alone would do to its slip, 1/(kg·m²). */
  mobility(k: number): number {
    return this.coupling.mutual[k * this.devices + k] as number;
  }

  /** What the moving members hold, J. */
  energy(): number {
    let sum = 0;
    for (let i = 0; i < this.u.length; i++) sum += (this.u[i] as number) * (this.u[i] as number);
    return sum / 2;
  }

  // What a device can take in this step: more where it grips as the step begins.
  private bound(h: number): void {
    const { least, most, slip, state } = this;
    for (let k = 0; k < this.devices; k++) {
      const still = state[k] === GRIPS || Math.abs(slip[k] as number) <= STILL;
      const reach = still ? h * (this.sticking[k] as number) : h;
      // A positive slip is met by what drags the first member anticlockwise.
      const met = this.oneWay[k] === 1 ? this.pushing : this.pulling;
      const other = this.oneWay[k] === 1 ? this.pulling : this.pushing;
      most[k] = (met[k] as number) === 0 ? 0 : reach * (met[k] as number);
      least[k] = this.oneWay[k] === 0 ? 0 - reach * (other[k] as number) : 0;
      if (!((least[k] as number) > -Infinity))
        throw new RangeError('a friction device has an end to its strength');
    }
  }

  // Another state that holds: by pivots on float64, or where those cannot tell, on fractions.
  private find(): void {
    const { unhindered, least, most, state } = this;
    if (this.pivots.solve(this.coupling.mutual, unhindered, least, most, state)) {
      const grip = this.gripOf();
      if (grip) this.grip = grip;
      if (grip && this.settle(NEAR * 1000)) return;
    }
    this.exact ??= new ExactPivots(this.coupling);
    this.exact.solve(this.u, least, most, state);
    const grip = this.gripOf();
    if (!grip) throw new Error('devices that share a reaction were told to grip');
    this.grip = grip;
    this.settle(Infinity);
  }

  // Impulses by the state that stands; whether it holds, as near as rounding can carry it.
  private settle(near: number): boolean {
    const { impulse, unhindered, least, most, state, devices, grip } = this;
    const { mutual } = this.coupling;
    const { at, inverse } = grip;
    const count = at.length;
    for (let k = 0; k < devices; k++) {
      const where = state[k] as number;
      impulse[k] = where === GRIPS ? 0 : ((where === MOST ? most[k] : least[k]) as number);
      if (impulse[k] === Infinity) return false;
    }
    for (let g = 0; g < count; g++) {
      const k = at[g] as number;
      let q = unhindered[k] as number;
      for (let j = 0; j < devices; j++) {
        if (state[j] !== GRIPS) q -= (mutual[k * devices + j] as number) * (impulse[j] as number);
      }
      grip.q[g] = q;
    }
    let holds = true;
    for (let g = 0; g < count; g++) {
      const k = at[g] as number;
      let sum = 0;
      let size = 0;
      for (let j = 0; j < count; j++) {
        const part = (inverse[g * count + j] as number) * (grip.q[j] as number);
        sum += part;
        size += Math.abs(part);
      }
      const [low, high] = [least[k] as number, most[k] as number];
      holds &&= sum >= low - near * size && sum <= high + near * size;
      impulse[k] = sum < low ? low : sum > high ? high : sum;
    }
    if (!holds) return false;
    for (let k = 0; k < devices; k++) {
      if (state[k] === GRIPS || !((most[k] as number) > (least[k] as number))) continue;
      let slip = unhindered[k] as number;
      let size = Math.abs(slip);
      for (let j = 0; j < devices; j++) {
        const change = (mutual[k * devices + j] as number) * (impulse[j] as number);
        slip -= change;
        size += Math.abs(change);
      }
      const wrong = state[k] === MOST ? -slip : slip;
      if (wrong > near * size) return false;
    }
    return true;
  }

  // Undefined where those that grip share a reaction.
  private gripOf(): Grip | undefined {
    const key = String(this.state);
    const known = this.grips.get(key);
    if (known) return known;
    const at = Int32Array.from([...this.state.keys()].filter((k) => this.state[k] === GRIPS));
    const { mutual } = this.coupling;
    const own = Float64Array.from(
      [...at].flatMap((k) => [...at].map((j) => mutual[k * this.devices + j] as number)),
    );
    const inverse = inverseOf(own, at.length);
    if (!inverse) return undefined;
    const grip = { at, inverse, q: new Float64Array(at.length) };
    this.grips.set(key, grip);
    return grip;
  }

  private slipsOf(u: Float64Array, into: Float64Array): void {
    const { free, slips } = this.coupling;
    for (let k = 0; k < this.devices; k++) {
      let sum = 0;
      for (let i = 0; i < free; i++) sum += (slips[k * free + i] as number) * (u[i] as number);
      into[k] = sum;
    }
  }

  // ΔT = h τᵀv − Σ impulse · slip − ½ |Δu|²: the last is what the step itself loses.
  private account(h: number): void {
    const { u, was, impulse, slip, heat } = this;
    const { free } = this.coupling;
    for (let p = 0; p < this.torque.length; p++) {
      let speed = 0;
      for (let i = 0; i < free; i++) {
        speed += (this.ports[p * free + i] as number) * (u[i] as number);
      }
      this.work += h * (this.torque[p] as number) * speed;
    }
    for (let k = 0; k < this.devices; k++) {
      heat[k] = (heat[k] as number) + (impulse[k] as number) * (slip[k] as number);
    }
    let sum = 0;
    for (let i = 0; i < free; i++) {
      const change = (u[i] as number) - (was[i] as number);
      sum += change * change;
    }
    this.loss += sum / 2;
  }
}

/** The devices that grip in a state, and the inverse of what they do to one another. */
interface Grip {
  readonly at: Int32Array;
  readonly inverse: Float64Array;
  readonly q: Float64Array;
}

// A slip that rounding leaves of none, rad/s; and how far rounding may carry a check.
const STILL = 1e-9;
const NEAR = 1e-12;
