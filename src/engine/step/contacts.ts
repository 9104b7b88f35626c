import { BoxedPivots, GRIPS, LEAST, MOST } from './boxed.ts';
import type { Coupling } from './coupling.ts';
import { ExactPivots } from './exact.ts';
import { inverseOf } from './inverse.ts';

/**
 * The devices of a train in a step: which grip, which slip and which way, and the impulses that
 * follow. The state that held in the step before is tried first and checked; only where it fails do
 * `BoxedPivots` find another, and where rounding hides it from them `ExactPivots`.
 */
export class Contacts {
  /** The bounds of each impulse, N·m·s: what a device puts against a positive slip at most. */
  readonly least: Float64Array;
  readonly most: Float64Array;
  /** The slips that the devices would have if none of them did anything, rad/s. */
  readonly unhindered: Float64Array;
  /** What each device does against its slip, N·m·s, once settled. */
  readonly impulse: Float64Array;

  private readonly coupling: Coupling;
  private readonly devices: number;
  private readonly state: Uint8Array;
  private readonly pivots: BoxedPivots;
  private readonly grips = new Map<number, Grip>();
  private exact?: ExactPivots;
  private grip: Grip;

  constructor(coupling: Coupling, devices: number) {
    this.coupling = coupling;
    this.devices = devices;
    const each = () => new Float64Array(devices);
    [this.least, this.most, this.unhindered, this.impulse] = [each(), each(), each(), each()];
    this.state = new Uint8Array(devices);
    this.pivots = new BoxedPivots(devices);
    this.grip = this.gripOf() as Grip;
  }

  /** Whether the k-th device gripped when last settled. */
  gripped(k: number): boolean {
    return this.state[k] === GRIPS;
  }

  /** Forgets the state: as if all had slipped. */
  release(): void {
    this.state.fill(LEAST);
    this.grip = this.gripOf() as Grip;
  }

  /** Finds the impulses for the bounds and the unhindered slips as they stand; `u` moves as those slips. */
  settle(u: Float64Array): void {
    if (!this.holds(NEAR)) this.find(u);
  }

  // Another state that holds: by pivots on float64, or where those cannot tell, on fractions.
  private find(u: Float64Array): void {
    const { unhindered, least, most, state } = this;
    if (this.pivots.solve(this.coupling.mutual, unhindered, least, most, state)) {
      const grip = this.gripOf();
      if (grip) this.grip = grip;
      if (grip && this.holds(NEAR * 1000)) return;
    }
    this.exact ??= new ExactPivots(this.coupling);
    this.exact.solve(u, least, most, state);
    const grip = this.gripOf();
    if (!grip) throw new Error('devices that share a reaction were told to grip');
    this.grip = grip;
    this.holds(NEAR);
  }

  // Impulses by the state that stands; whether it holds, as near as rounding can carry it.
  private holds(near: number): boolean {
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
    const { state, devices } = this;
    const { mutual } = this.coupling;
    let key = 0;
    for (let k = 0; k < devices; k++) key = 2 * key + (state[k] === GRIPS ? 1 : 0);
    const known = this.grips.get(key);
    if (known) return known;
    const at = Int32Array.from([...state.keys()].filter((k) => state[k] === GRIPS));
    const own = [...at].flatMap((k) => [...at].map((j) => mutual[k * devices + j] as number));
    const inverse = inverseOf(Float64Array.from(own), at.length);
    if (!inverse) return undefined;
    const grip = { at, inverse, q: new Float64Array(at.length) };
    this.grips.set(key, grip);
    return grip;
  }
}

/** The devices that grip in a state, and the inverse of what they do to one another. */
interface Grip {
  readonly at: Int32Array;
  readonly inverse: Float64Array;
  readonly q: Float64Array;
}

// How far rounding may carry a check, in parts of what is added up.
const NEAR = 1e-12;
