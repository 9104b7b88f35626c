import {
  add,
  Base,
  extremes,
  type Form,
  fraction,
  given,
  type Int,
  minus,
  multiply,
  negate,
  ONE,
  opposite,
  type Rational,
  signOf,
  times,
  ZERO,
} from '../linear/index.ts';
import { type Motion, tiesOf, willis } from '../motion/index.ts';
import { canPush, isSpan, type Quantity, value, type Verdict } from '../reckon/index.ts';
import type { Mesh } from '../train/index.ts';
import type { Carried } from './carried.ts';
import type { Observed } from './observed.ts';

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

/** 'self-locking': with these losses no torque at the driving end turns the train. */
export type Efficiency =
  | { readonly state: 'runs'; readonly value: Rational }
  | { readonly state: 'self-locking'; readonly value?: Rational };

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
export function efficiencyOf(
  verdict: Verdict,
  { bodies, slips }: Observed,
  { point }: Carried,
  losses: MeshEfficiency,
): Efficiency | undefined {
  const { motion } = verdict;
  const lossless = point.meshes;
  const slides = motion.meshes.map((mesh) => slideOf(motion, mesh, bodies));
  if (slides.some((slide, m) => !slide && lossless[m]?.num !== 0)) return undefined;
  const speeds = slides.map((slide) => slide ?? ZERO);
  const search = new Search(verdict, slips, speeds, losses);
  let directions = search.directionsOf(lossless);
  let consistent: Rational | undefined;
  for (let round = 0; round <= motion.meshes.length; round++) {
    const outcome = search.solve(directions);
    if (outcome === 'unsettled') return undefined;
    if (outcome === 'impossible') break;
    const corrected = search.directionsOf(outcome.meshes);
    if (corrected.every((way, m) => way === directions[m])) {
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

interface Outcome {
  readonly load: Rational;
  readonly meshes: readonly Rational[];
}

class Search {
  private readonly verdict: Verdict;
  private readonly slips: readonly Quantity[];
  private readonly slides: readonly Rational[];
  private readonly losses: MeshEfficiency;

  constructor(
    verdict: Verdict,
    slips: readonly Quantity[],
    slides: readonly Rational[],
    losses: MeshEfficiency,
  ) {
    this.verdict = verdict;
    this.slips = slips;
    this.slides = slides;
    this.losses = losses;
  }

  /** A wheel that is pushed back by its mesh as it turns drives the mesh. */
  directionsOf(multipliers: readonly Rational[]): Direction[] {
    return multipliers.map((lambda, m) => {
      return (0 - signOf(lambda) * signOf(this.slides[m] as Rational)) as Direction;
    });
  }

  /** Torques with losses for one unit of torque at the turned end, the way in which it turns. */
  solve(directions: readonly Direction[]): Outcome | 'unsettled' | 'impossible' {
    const { motion, question } = this.verdict;
    const meshes = motion.meshes.length;
    const load = meshes + motion.devices.length;
    const terms: [number, Int][][] = Array.from({ length: motion.columns }, () => []);
    motion.meshes.forEach((mesh, m) => {
      for (const [body, coef] of this.lossy(mesh, directions[m] as Direction)) {
        terms[body - 1]?.push([m, coef]);
      }
    });
    motion.devices.forEach(({ slip }, d) => {
      if (!canPush(this.verdict, d, this.slips)) return;
      slip.at.forEach((body, k) => terms[body]?.push([meshes + d, slip.coef[k] as Int]));
    });
    const loadBody = motion.speedOf(question.reluctant as string).at[0] as number;
    terms[loadBody]?.push([load, 1]);
    const ties = tiesOf(motion, question);
    ties.forEach(({ at, coef }, t) => {
      at.forEach((body, k) => terms[body]?.push([load + 1 + t, coef[k] as Int]));
    });
    const [end] = question.given;
    const turned = motion.speedOf(end?.member as string).at[0];
    const pushed = opposite(end?.speed ?? ONE);
    const rows = terms.map((body, column) => {
      const form = { at: body.map(([at]) => at), coef: body.map(([, coef]) => coef) };
      return given(form, column === turned ? pushed : ZERO);
    });
    const unit = (column: number): Form => ({ at: [column], coef: [1] });
    const forms = [unit(load), ...motion.meshes.map((_, m) => unit(m))];
    const columns = load + 1 + ties.length;
    const bounds = extremes(columns, rows, forms, new Base(columns, []));
    if (bounds[0]?.least.solution.state === 'infeasible') return 'impossible';
    const settled: Rational[] = [];
    for (const [k, { least, greatest }] of bounds.entries()) {
      const [from, to] = [value(least, 1), value(greatest, -1)];
      const same = from && to && minus(from, to).num === 0;
      const matters = k === 0 || this.slides[k - 1]?.num !== 0;
      if (!same && matters) return 'unsettled';
      settled.push(same ? from : ZERO);
    }
    return { load: settled[0] as Rational, meshes: settled.slice(1) };
  }

  /** −T_load·ω_load, for the turned end has a torque and a speed of size 1, one way. */
  efficiency(load: Rational): Rational {
    const { solution, question, motion } = this.verdict;
    const body = motion.speedOf(question.reluctant as string).at[0] as number;
    if (solution.state !== 'optimal') throw new Error('only a train that drives has an efficiency');
    const speed = fraction(solution.point.nums[body] as Int, solution.point.den);
    return opposite(times(load, speed));
  }

  /** The best efficiency over all directions that agree with themselves and deliver power. */
  delivering(directions: readonly Direction[]): Rational | undefined {
    const open = directions.flatMap((_, m) => (this.slides[m]?.num === 0 ? [] : [m]));
    if (open.length > MOST_MESHES) return undefined;
    let best: Rational | undefined;
    for (let pattern = 0; pattern < 2 ** open.length; pattern++) {
      const tried = directions.map((way, m): Direction => {
        const bit = open.indexOf(m);
        return bit < 0 ? way : (pattern >> bit) & 1 ? 1 : -1;
      });
      const outcome = this.solve(tried);
      if (typeof outcome === 'string') continue;
      const agrees = this.directionsOf(outcome.meshes).every(
        (way, m) => way === 0 || way === tried[m],
      );
      const found = this.efficiency(outcome.load);
      if (agrees && signOf(found) > 0 && (!best || signOf(minus(found, best)) > 0)) best = found;
    }
    return best;
  }

  // Willis's torques with the driven wheel's made less, over a common denominator.
  private lossy(mesh: Mesh, direction: Direction): [body: number, torque: Int][] {
    const { assembly } = this.verdict.motion;
    const { num, den } = mesh.kind === 'internal' ? this.losses.internal : this.losses.external;
    const torques = willis(mesh).map(([, torque]) => torque) as [number, number, number];
    const a = multiply(torques[0], direction === -1 ? num : den);
    const b = multiply(torques[1], direction === 1 ? num : den);
    const bodies = [mesh.a.member, mesh.b.member, mesh.carrier].map(assembly.bodyOf);
    return [a, b, negate(add(a, b))].map((torque, k) => [bodies[k] as number, torque]);
  }
}

// 2^8 directions are tried at the most: more meshes than any one path has.
const MOST_MESHES = 8;

// Wheel a's speed against the mesh's carrier; undefined where it is not settled.
function slideOf(motion: Motion, mesh: Mesh, bodies: readonly Quantity[]): Rational | undefined {
  const { bodyOf } = motion.assembly;
  const wheel = bodies[bodyOf(mesh.a.member) as number] as Quantity;
  const carrier = bodies[bodyOf(mesh.carrier) as number] as Quantity;
  return isSpan(wheel) || isSpan(carrier) ? undefined : minus(wheel, carrier);
}
