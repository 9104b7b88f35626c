import {
  add,
  type LinearForm,
  fraction,
  given,
  minus,
  multiply,
  negate,
  opposite,
  type Rational,
  signOf,
  sumOf,
  times,
  ZERO,
} from '../linear/index.ts';
import { type GivenSpeed, tieRows, willis } from '../motion/index.ts';
import { isSpan, pushersOf, type Quantity, speedAt, TorqueBalance } from '../reckon/index.ts';
import type { Mesh } from '../train/index.ts';
import type { Efficiency } from './answer.ts';
import type { Carried } from './carried.ts';

/** The part of the power through a mesh, seen from its carrier, that comes out again: 0 < η ≤ 1. */
export interface MeshEfficiency {
  /** Of external meshes, chains and bevels. */
  readonly external: Rational;
  readonly internal: Rational;
}

/** Common practice for ground gears in oil, no source: 0.985 external, 0.99 internal. */
export const USUAL_EFFICIENCY: MeshEfficiency = {
  external: fraction(985, 1000),
  internal: fraction(99, 100),
};

/**
 * Power out over power in with mesh losses, from the turned to the reluctant end; undefined
 * where torques or speeds are not settled.
 *
 * In the carrier's frame a mesh is a fixed pair: the torque on the driven wheel is η times
 * what it would be (H. W. Müller, Epicyclic Drive Trains, 1982; VDI 2157). Which wheel
 * drives depends on the torques and the torques on that, so directions are guessed from the
 * lossless torques and corrected until they agree; where that does not deliver power all
 * directions are tried, and if none does the train locks itself.
 */
export function efficiencyOf(carried: Carried, losses: MeshEfficiency): Efficiency | undefined {
  const search = new Search(carried, losses);
  if (!search.isSettled) return undefined;
  let directions = search.directionsOf(carried.proved.meshes);
  let consistent: Rational | undefined;
  for (let round = 0; round <= directions.size; round++) {
    const outcome = search.solve(directions);
    if (outcome === 'unsettled') return undefined;
    if (outcome === 'impossible') break;
    const corrected = search.directionsOf(outcome.meshes);
    if ([...corrected].every(([mesh, way]) => way === directions.get(mesh))) {
      consistent = search.efficiency(outcome.load);
      break;
    }
    directions = corrected;
  }
  if (consistent && signOf(consistent) > 0) return { state: 'runs', value: consistent };
  const other = search.delivering(directions);
  if (other) return { state: 'runs', value: other };
  return consistent ? { state: 'self-locking', value: consistent } : { state: 'self-locking' };
}

// 1: wheel a drives the mesh, -1: wheel b does, 0: they do not move against the carrier.
type Direction = -1 | 0 | 1;
type Directions = ReadonlyMap<Mesh, Direction>;

interface Outcome {
  readonly load: Rational;
  readonly meshes: ReadonlyMap<Mesh, Rational>;
}

class Search {
  private readonly carried: Carried;
  private readonly losses: MeshEfficiency;
  // Wheel a's speed against the mesh's carrier; where it is not settled, none.
  private readonly slides: ReadonlyMap<Mesh, Quantity>;

  constructor(carried: Carried, losses: MeshEfficiency) {
    const { ruling, observed } = carried;
    this.carried = carried;
    this.losses = losses;
    this.slides = new Map(
      ruling.motion.meshes.map(({ mesh }) => {
        return [mesh, apart(observed.speedOf(mesh.a.member), observed.speedOf(mesh.carrier))];
      }),
    );
  }

  /** Whether every mesh that is loaded surely moves so much. */
  get isSettled(): boolean {
    const { meshes } = this.carried.proved;
    return [...this.slides].every(([mesh, slide]) => !isSpan(slide) || meshes.get(mesh)?.num === 0);
  }

  /** A wheel that is pushed back by its mesh as it turns drives the mesh. */
  directionsOf(multipliers: ReadonlyMap<Mesh, Rational>): Directions {
    return new Map(
      [...multipliers].map(([mesh, lambda]) => {
        return [mesh, (0 - signOf(lambda) * signOf(this.slideOf(mesh))) as Direction];
      }),
    );
  }

  /** Torques with losses for one unit of torque at the turned end, the way in which it turns. */
  solve(directions: Directions): Outcome | 'unsettled' | 'impossible' {
    const { ruling, observed } = this.carried;
    const { motion, question } = ruling;
    const balance = new TorqueBalance(motion);
    const meshes = new Map(
      [...directions].map(([mesh, way]) => [mesh, balance.pusher(this.lossy(mesh, way))]),
    );
    for (const { slip } of pushersOf(ruling, observed.slips)) balance.pusher(slip);
    for (const tie of tieRows(motion, question.tied)) balance.pusher(tie);
    const load = balance.pusher(motion.speedOf(question.reluctant as string));
    const { member, speed } = question.given[0] as GivenSpeed;
    const turned = balance.pusher(motion.speedOf(member));
    const found = balance.settle([given(turned, speed)], [load, ...meshes.values()]);
    if (!found) return 'impossible';
    const resists = found.get(load) as Quantity;
    const multipliers = [...meshes].map(
      ([mesh, form]) => [mesh, found.get(form) as Quantity] as const,
    );
    const matters = multipliers.filter(([mesh]) => this.slideOf(mesh).num !== 0);
    if (isSpan(resists) || matters.some(([, lambda]) => isSpan(lambda))) return 'unsettled';
    const settled = multipliers.map(
      ([mesh, lambda]) => [mesh, isSpan(lambda) ? ZERO : lambda] as const,
    );
    return { load: resists, meshes: new Map(settled) };
  }

  /** −T_load·ω_load, for the turned end has a torque and a speed of size 1, one way. */
  efficiency(load: Rational): Rational {
    const { ruling } = this.carried;
    return opposite(times(load, speedAt(ruling, ruling.question.reluctant as string)));
  }

  /** The best efficiency over all directions that agree with themselves and deliver power. */
  delivering(directions: Directions): Rational | undefined {
    const open = [...directions.keys()].filter((mesh) => this.slideOf(mesh).num !== 0);
    if (open.length > MOST_MESHES) return undefined;
    let best: Rational | undefined;
    for (let pattern = 0; pattern < 2 ** open.length; pattern++) {
      const ways = open.map((mesh, bit): [Mesh, Direction] => [
        mesh,
        (pattern >> bit) & 1 ? 1 : -1,
      ]);
      const tried = new Map([...directions, ...ways]);
      const outcome = this.solve(tried);
      if (typeof outcome === 'string') continue;
      const agrees = [...this.directionsOf(outcome.meshes)].every(
        ([mesh, way]) => way === 0 || way === tried.get(mesh),
      );
      const found = this.efficiency(outcome.load);
      if (agrees && signOf(found) > 0 && (!best || signOf(minus(found, best)) > 0)) best = found;
    }
    return best;
  }

  private slideOf(mesh: Mesh): Rational {
    const slide = this.slides.get(mesh) as Quantity;
    return isSpan(slide) ? ZERO : slide;
  }

  // Willis's torques with the driven wheel's made less, over a common denominator.
  private lossy(mesh: Mesh, direction: Direction): LinearForm {
    const { speedOf } = this.carried.ruling.motion;
    const { num, den } = mesh.kind === 'internal' ? this.losses.internal : this.losses.external;
    const [onA, onB] = willis(mesh).map(([, torque]) => torque) as [number, number];
    const a = multiply(onA, direction === -1 ? num : den);
    const b = multiply(onB, direction === 1 ? num : den);
    return sumOf([
      [speedOf(mesh.a.member), a],
      [speedOf(mesh.b.member), b],
      [speedOf(mesh.carrier), negate(add(a, b))],
    ]);
  }
}

// 2^8 directions are tried at the most: more meshes than any one path has.
const MOST_MESHES = 8;

function apart(wheel: Quantity, carrier: Quantity): Quantity {
  return isSpan(wheel) || isSpan(carrier) ? { from: null, to: null } : minus(wheel, carrier);
}
