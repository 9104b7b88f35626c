import { type Blank, centreOf, type Engagement, type Pin } from './blank.ts';
import type { Cluster } from './pinning.ts';

/** A cluster's planets at one place: how far they stand round, and each planet's rotation. */
export interface Copy {
  /** Degrees from where the cluster was laid out. */
  readonly degrees: number;
  /** The degrees by which the casting on each pin is turned. */
  readonly turned: ReadonlyMap<Pin, number>;
}

/**
 * Finds the place nearest to `ideal` degrees, and within `reach` of it, at which every mesh of
 * a cluster fits the wheels about the main axis; undefined if there is none. The first copies
 * settle the phase of each wheel: it is written to the blanks, and later copies keep it.
 */
// The timing of a mesh. Let u be how many pitches the direction of the mate stands clockwise of
// a wheel's tooth 0: u = (direction − phase)·z/360. Where a tooth of one wheel is on the line of
// centres, a space of the other must be, and their pitch lines roll on one another. Outside one
// another they turn opposite ways, so u_a + u_b stays, and is 1/2 (give or take whole pitches);
// of a ring and the planet inside it u_b − u_a stays, and is 1/2. In the carrier's frame this is
// Willis's relation; so what is timed once is timed at all angles.
//
// A copy must satisfy all its meshes. Turning the cluster round by θ changes what each next
// mesh asks for in proportion to θ, so a mesh that closes a circle from one central wheel to
// another is satisfied at equal steps of θ: 360°/(sun + ring) in a plain set. A casting with two
// steps may be put on its pin in as many ways as its first step has teeth; each has steps of
// its own.
export function place(
  cluster: Cluster,
  ideal: number,
  reach: number,
  blanks: readonly Blank[],
): Copy | undefined {
  const choices = choicesOf(cluster);
  let best: Timed | undefined;
  let nearest = reach + NOISE;
  for (let choice = 0; choice < choices; choice++) {
    const here = time(cluster, ideal, choice);
    const turned = time(cluster, ideal + 1, choice);
    for (const degrees of fitting(here.gaps, turned.gaps, Math.min(reach, nearest))) {
      const timed = time(cluster, ideal + degrees, choice);
      if (Math.abs(degrees) < nearest - NOISE && timed.gaps.every(isWhole)) {
        [best, nearest] = [timed, Math.abs(degrees)];
      }
    }
  }
  if (!best) return undefined;
  for (const blank of blanks) {
    const phase = best.phases.get(blank);
    if (phase !== undefined) blank.phase = phase;
  }
  return { degrees: best.degrees, turned: best.turned };
}

const NOISE = 1e-9;

function isWhole(gap: number): boolean {
  return Math.abs(gap - Math.round(gap)) < 1e-6;
}

// How far to turn on so that the first gap that turns is whole; nearest first.
function fitting(here: readonly number[], on: readonly number[], reach: number): number[] {
  const k = here.findIndex((gap, i) => Math.abs((on[i] ?? 0) - gap) > 1e-9);
  if (k < 0) return [0];
  const gap = here[k] as number;
  const perDegree = (on[k] as number) - gap;
  const most = Math.abs(perDegree) * reach;
  const found: number[] = [];
  for (let whole = Math.ceil(gap - most - 1e-6); whole <= gap + most + 1e-6; whole++) {
    found.push((whole - gap) / perDegree);
  }
  return found.toSorted((a, b) => Math.abs(a) - Math.abs(b));
}

/** In how many ways the castings of a cluster can be put on their pins: teeth of first steps. */
function choicesOf({ pins, engagements }: Cluster): number {
  let choices = 1;
  for (const pin of pins) choices *= waysOf(pin, engagements);
  return Math.min(choices, MOST_CHOICES);
}

const MOST_CHOICES = 10_000;

function waysOf(pin: Pin, engagements: readonly Engagement[]): number {
  const wheels = new Set(engagements.flatMap(({ a, b }) => [a, b]).filter((w) => w.pin === pin));
  const [first] = wheels;
  return wheels.size > 1 && first ? first.teeth : 1;
}

interface Timed extends Copy {
  readonly phases: Map<Blank, number>;
  readonly turned: Map<Pin, number>;
  /** Of each mesh that closes a circle, by how many pitches it is off; whole is none. */
  readonly gaps: number[];
}

function time({ pins, engagements }: Cluster, degrees: number, choice: number): Timed {
  const timed: Timed = { degrees, phases: new Map(), turned: new Map(), gaps: [] };
  const ways = new Map<Pin, number>();
  let rest = choice;
  for (const pin of pins) {
    const count = waysOf(pin, engagements);
    ways.set(pin, rest % count);
    rest = Math.floor(rest / count);
  }
  const open = [...engagements];
  while (open.length > 0) {
    const known = ({ a, b }: Engagement) => [a, b].some((w) => standing(w, timed) !== undefined);
    const [engagement] = open.splice(Math.max(0, open.findIndex(known)), 1) as [Engagement];
    mesh(engagement, timed, ways);
  }
  return timed;
}

function phaseOf(blank: Blank, { phases }: Timed): number | undefined {
  return phases.get(blank) ?? blank.phase;
}

// Where tooth 0 of a wheel stands: its own phase, turned with its casting.
function standing(blank: Blank, timed: Timed): number | undefined {
  const turned = blank.pin ? timed.turned.get(blank.pin) : 0;
  const phase = phaseOf(blank, timed);
  return turned === undefined || phase === undefined ? undefined : turned + phase;
}

function mesh(engagement: Engagement, timed: Timed, ways: ReadonlyMap<Pin, number>): void {
  const { a, b } = engagement;
  if (standing(a, timed) === undefined && standing(b, timed) === undefined) {
    const first = a.pin ? b : a;
    timed.phases.set(first, 0);
    if (first.pin) timed.turned.set(first.pin, 0);
  }
  const fromA = standing(a, timed) !== undefined;
  const other = fromA ? b : a;
  const asked = askedOf(engagement, fromA, standing(fromA ? a : b, timed) ?? 0, timed.degrees);
  const pitch = 360 / other.teeth;
  const has = standing(other, timed);
  if (has !== undefined) {
    timed.gaps.push((has - asked) / pitch);
  } else if (other.pin && !timed.turned.has(other.pin)) {
    const phase = phaseOf(other, timed);
    if (phase === undefined) timed.phases.set(other, 0);
    const way = phase === undefined ? 0 : (ways.get(other.pin) ?? 0);
    timed.turned.set(other.pin, asked - (phase ?? 0) + way * pitch);
  } else {
    timed.phases.set(other, asked - (other.pin ? (timed.turned.get(other.pin) ?? 0) : 0));
  }
}

function askedOf({ a, b, internal }: Engagement, fromA: boolean, has: number, degrees: number) {
  const [known, other] = fromA ? [a, b] : [b, a];
  const [from, to] = [centreOf(a.pin), centreOf(b.pin)];
  // From a to b, or, of an internal mesh, from the ring's centre to the planet's.
  const way = internal ? -1 : 1;
  const [dx, dy] = [way * (to.x - from.x), way * (to.y - from.y)];
  const direction = (Math.atan2(dx, -dy) * 180) / Math.PI + degrees;
  const [ofKnown, ofOther] = internal
    ? [direction, direction]
    : [direction + (fromA ? 0 : 180), direction + (fromA ? 180 : 0)];
  const u = ((ofKnown - has) * known.teeth) / 360;
  const mate = internal ? (fromA ? u + 0.5 : u - 0.5) : 0.5 - u;
  return ofOther - (mate * 360) / other.teeth;
}
