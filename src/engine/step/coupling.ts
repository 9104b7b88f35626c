import type { Inertia } from '../inertia/index.ts';
import {
  type LinearForm,
  fraction,
  fromNumber,
  minus,
  over,
  plus,
  type Rational,
  signOf,
  times,
  toNumber,
  ZERO,
} from '../linear/index.ts';
import type { Motion } from '../motion/index.ts';
import { CASE, type MemberName } from '../train/index.ts';

/**
 * A train with inertias, in coordinates u in which its energy is ½ |u|²: with the exact kernel K of
 * its meshes and M = KᵀJK = L D Lᵀ in fractions, u = √D Lᵀ v. So nothing is rounded but the ends,
 * however much faster than the shafts some planet turns. Matrices stand row after row.
 */
export interface Coupling {
  readonly free: number;
  /**
   * What each coordinate puts into the slip of each device, and so what a unit of impulse on it does
   * to u. A one-way clutch's is turned so that it holds against a positive slip.
   */
  readonly slips: Float64Array;
  /** W: what a unit of impulse on one device does to the slip of another. */
  readonly mutual: Float64Array;
  /** What each coordinate puts into the speed of a member. */
  speedOf(member: MemberName): readonly number[];
  /** The same slips in fractions, of coordinates u/√D, and D. */
  readonly exact: {
    readonly slips: readonly (readonly Rational[])[];
    readonly d: readonly Rational[];
  };
}

/** Throws a RangeError that names members where some motion has no inertia behind it. */
export function couplingOf(motion: Motion, inertias: ReadonlyMap<MemberName, Inertia>): Coupling {
  const { lower, d } = split(massOf(motion, inertias));
  if (d.some((one) => signOf(one) <= 0)) {
    throw new RangeError(`no inertia behind some motion: ${bare(motion, inertias)}`);
  }
  const roots = d.map((one) => Math.sqrt(toNumber(one)));
  // L⁻¹ times a row of the kernel.
  const turned = (form: LinearForm): Rational[] => {
    const row: Rational[] = [];
    for (const [i, part] of partsOf(motion, form).entries()) {
      const known = lower[i] as readonly Rational[];
      row.push(row.reduce((rest, it, j) => minus(rest, times(known[j] as Rational, it)), part));
    }
    return row;
  };
  const rounded = (row: readonly Rational[]) => {
    return row.map((part, i) => toNumber(part) / (roots[i] as number));
  };
  const exact = motion.devices.map(({ device, slip }) => {
    const back = device.kind === 'one-way' && device.lets === 'clockwise';
    return turned(slip).map((part) => (back ? minus(ZERO, part) : part));
  });
  const slips = exact.map(rounded);
  const speeds = new Map<MemberName, readonly number[]>();
  return {
    free: d.length,
    slips: Float64Array.from(slips.flat()),
    mutual: Float64Array.from(slips.flatMap((row) => slips.map((other) => dot(row, other)))),
    speedOf: (member) => {
      const known = speeds.get(member) ?? rounded(turned(motion.speedOf(member)));
      speeds.set(member, known);
      return known;
    },
    exact: { slips: exact, d },
  };
}

export function dot(a: readonly number[], b: ArrayLike<number>): number {
  return a.reduce((sum, value, k) => sum + value * (b[k] as number), 0);
}

// What each free coordinate of the meshes puts into a form.
function partsOf(motion: Motion, form: LinearForm): Rational[] {
  const { coef, times: scale } = motion.base.reduce(form);
  return coef.map((part) => fraction(part, scale));
}

function massOf(motion: Motion, inertias: ReadonlyMap<MemberName, Inertia>): Rational[][] {
  const mass = motion.base.free.map(() => motion.base.free.map(() => ZERO));
  for (const { label } of motion.assembly.bodies.slice(1)) {
    const row = partsOf(motion, motion.speedOf(label));
    const kgm2 = fromNumber(inertias.get(label)?.kgm2 ?? 0);
    for (const [i, at] of mass.entries()) {
      for (const [j, sum] of at.entries()) {
        at[j] = plus(sum, times(kgm2, times(row[i] as Rational, row[j] as Rational)));
      }
    }
  }
  return mass;
}

// M = L D Lᵀ, with ones on L's diagonal; a part of D that is 0 ends it.
function split(mass: readonly (readonly Rational[])[]): {
  readonly lower: readonly (readonly Rational[])[];
  readonly d: readonly Rational[];
} {
  const lower: Rational[][] = [];
  const d: Rational[] = [];
  for (const [i, row] of mass.entries()) {
    const own: Rational[] = [];
    let rest = row[i] as Rational;
    for (let j = 0; j < i; j++) {
      const above = lower[j] as readonly Rational[];
      const part = own.reduce((left, it, k) => {
        return minus(left, times(times(it, above[k] as Rational), d[k] as Rational));
      }, row[j] as Rational);
      if (signOf(d[j] as Rational) === 0) return { lower, d };
      const entry = over(part, d[j] as Rational);
      own.push(entry);
      rest = minus(rest, times(entry, part));
    }
    lower.push(own);
    d.push(rest);
  }
  return { lower, d };
}

function bare(motion: Motion, inertias: ReadonlyMap<MemberName, Inertia>): string {
  return motion.assembly.bodies
    .map(({ label }) => label)
    .filter((label) => label !== CASE && !((inertias.get(label)?.kgm2 ?? 0) > 0))
    .join(', ');
}
