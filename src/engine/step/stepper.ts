import type { Inertia } from '../inertia/index.ts';
import type { Motion } from '../motion/index.ts';
import type { MemberName } from '../train/index.ts';
import { Contacts } from './contacts.ts';
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
 * A step allocates nothing, but where devices grip together that never did before.
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

  private readonly coupling: Coupling;
  private readonly u: Float64Array;
  private readonly was: Float64Array;
  private readonly slip: Float64Array;
  private readonly contacts: Contacts;
  private readonly oneWay: Int8Array; // 1 where the slip's sign is turned, −1 where not, 0: friction
  private readonly ports: Float64Array;
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
    this.slip = each();
    this.contacts = new Contacts(this.coupling, this.devices);
    this.sticking = each().fill(1);
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
    this.contacts.release();
    this.heat.fill(0);
    [this.work, this.loss] = [0, 0];
  }

  /** One step of `h` seconds with the torques and capacities as they stand now. */
  step(h: number): void {
    const { u, was, contacts, devices } = this;
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
    this.slipsOf(u, contacts.unhindered);
    contacts.settle(u);
    for (let k = 0; k < devices; k++) {
      const by = contacts.impulse[k] as number;
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
    const torque = (this.contacts.impulse[k] as number) / this.lastH;
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
    const { contacts, slip } = this;
    const { least, most } = contacts;
    for (let k = 0; k < this.devices; k++) {
      const still = contacts.gripped(k) || Math.abs(slip[k] as number) <= STILL;
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
    const { u, was, slip, heat } = this;
    const { impulse } = this.contacts;
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

// A slip that rounding leaves of none, rad/s.
const STILL = 1e-9;
