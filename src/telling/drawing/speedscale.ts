import { compoundLevers, type Lever, leversOf } from '../../engine/lever/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import { motionOf } from '../../engine/motion/index.ts';
import { type Assembly, CASE, type Device, type Train } from '../../engine/train/index.ts';
import { LINE, linesOf, SIZE, widthOf } from './lettering.ts';

/**
 * The speed scale of a train: each set a straight lever whose members stand at true distances,
 * sets that share two members made one, a member that stands on several joined across; heights
 * are speeds. Laid out once; `speedScene` puts it at speeds.
 */
export interface SpeedScale {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** The heights between which nodes stand, top and foot. */
  readonly top: number;
  readonly foot: number;
  readonly levers: readonly (readonly ScaleNode[])[];
  /** Places of one member that stand apart, from left to right. */
  readonly joined: readonly { readonly member: string; readonly xs: readonly number[] }[];
  readonly devices: readonly ScaleDevice[];
}

/** A member's place: an axis along which its node slides. */
export interface ScaleNode {
  readonly member: string;
  readonly x: number;
  readonly names: readonly string[];
  /** The base line of the first line of its name. */
  readonly nameY: number;
}

/** A device between the places of two members; of one that holds to the case, one place. */
export interface ScaleDevice {
  readonly device: Device;
  readonly first: { readonly member: string; readonly x: number };
  readonly second: { readonly member: string; readonly x: number };
}

const TOP = 46;
const SPAN = 360;
const BETWEEN = 76;
const NAME = 96; // a longer name takes another line

/** Lays the speed scale of a train out; deterministic. */
export function speedScale(train: Train): SpeedScale {
  const motion = motionOf(train);
  const { assembly } = motion;
  const levers = compoundLevers(leversOf(motion));
  const labelOf = (body: number) => assembly.bodies[body]?.label ?? CASE;
  let x = NAME / 2 + 12;
  const axes: { member: string; x: number }[][] = levers.map((lever) => {
    const places = placesOn(lever).map(({ body, at }) => ({ member: labelOf(body), x: x + at }));
    x = (places.at(-1)?.x ?? x) + BETWEEN;
    return places;
  });
  const known = new Set(axes.flatMap((lever) => lever.map(({ member }) => member)));
  for (const member of loose(train, assembly, known)) {
    axes.push([{ member, x }]);
    x += BETWEEN;
  }
  const rows = rowsOf(axes.flat());
  const foot = TOP + SPAN;
  const depth = Math.max(0, ...rows.values());
  const placeOf = (name: string) => {
    const member = labelOf(assembly.bodyOf(name) ?? 0);
    const found = axes.flat().find((axis) => axis.member === member);
    return { member, x: found?.x ?? 0 };
  };
  return {
    name: train.name,
    width: Math.max(...axes.flat().map((axis) => axis.x + NAME / 2), 200) + 20,
    height: foot + 30 + (depth + 1) * ROW,
    top: TOP,
    foot,
    levers: axes.map((lever) =>
      lever.map((axis) => ({
        ...axis,
        names: namesOf(axis.member),
        nameY: foot + 30 + (rows.get(axis.x) ?? 0) * ROW,
      })),
    ),
    joined: [...known].flatMap((member) => {
      const xs = axes.flat().flatMap((axis) => (axis.member === member ? [axis.x] : []));
      return xs.length > 1 ? [{ member, xs: xs.toSorted((a, b) => a - b) }] : [];
    }),
    devices: train.devices.map((device) => {
      const held = device.first === CASE ? device.second : device.first;
      const other = device.first === CASE ? CASE : device.second;
      const first = placeOf(held);
      const second = other === CASE ? { member: CASE, x: first.x } : placeOf(other);
      return { device, first, second };
    }),
  };
}

// Wide enough that no two nodes of it touch, where their places allow that at all.
function placesOn({ nodes }: Lever): { body: number; at: number }[] {
  const ats = nodes.map(({ at }) => toNumber(at));
  const gaps = ats.slice(1).flatMap((at, k) => (at > (ats[k] ?? 0) ? [at - (ats[k] ?? 0)] : []));
  const width = Math.min(Math.max(180, 48 / Math.min(...gaps, 1)), 420);
  return nodes.map(({ body }, k) => ({ body, at: (ats[k] ?? 0) * width }));
}

// Members that no set knows: races, drums between two clutches.
function loose(train: Train, assembly: Assembly, known: ReadonlySet<string>): string[] {
  const named = [train.input, train.output, ...train.devices.flatMap((d) => [d.first, d.second])];
  const labels = named.map((name) => assembly.bodies[assembly.bodyOf(name) ?? 0]?.label ?? CASE);
  return [...new Set(labels)].filter((label) => label !== CASE && !known.has(label));
}

const ROW = 2 * LINE + 10;

function namesOf(member: string): string[] {
  return linesOf(member.replace('.', ' '), SIZE, NAME);
}

// The first row below the axes in which a name touches none that stands there.
function rowsOf(axes: readonly { readonly member: string; readonly x: number }[]) {
  const ends: number[] = [];
  const rows = new Map<number, number>();
  for (const { member, x } of axes.toSorted((a, b) => a.x - b.x)) {
    const half = Math.max(...namesOf(member).map((line) => widthOf(line, SIZE))) / 2;
    let row = ends.findIndex((end) => end + 10 <= x - half);
    if (row < 0) row = ends.length;
    ends[row] = x + half;
    rows.set(x, row);
  }
  return rows;
}
