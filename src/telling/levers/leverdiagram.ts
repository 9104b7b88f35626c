import { compoundLevers, leversOf } from '../../engine/lever/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import { motionOf } from '../../engine/motion/index.ts';
import { CASE, type Device, outputsOf, type Train } from '../../engine/train/index.ts';
import { asInFile } from '../scene/index.ts';
import { type AxisName, nameAxes } from './axisnames.ts';
import { arranged, type Block } from './blocks.ts';

/**
 * The lever diagram of a train: each set a straight lever whose members stand at true distances,
 * sets that share two members made one, a member that stands on several joined across; heights
 * are speeds. Laid out once; `leverScene` puts it at speeds.
 */
export interface LeverDiagram {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** The heights between which nodes stand, top and foot. */
  readonly top: number;
  readonly foot: number;
  readonly levers: readonly (readonly DiagramNode[])[];
  /** Places of one member that stand apart, from left to right. */
  readonly joined: readonly { readonly member: string; readonly xs: readonly number[] }[];
  readonly devices: readonly LeverDevice[];
}

/** A member's place: an axis along which its node slides. */
export interface DiagramNode extends AxisName {
  readonly member: string;
  readonly x: number;
}

/** A device between the places of two members; of one that holds to the case, one place. */
export interface LeverDevice {
  readonly device: Device;
  readonly first: { readonly member: string; readonly x: number };
  readonly second: { readonly member: string; readonly x: number };
}

const TOP = 46;
const SPAN = 360;
const SIDE = 52; // left of the first axis, for numerals

/**
 * Lays the lever diagram of a train out, its arms as long as a sheet of `width` units has room for;
 * deterministic. A diagram of many axes is wider, so that a finger finds each. Names stand as the
 * reader calls things.
 */
export function leverDiagram(train: Train, width = 1000, nameOf = asInFile): LeverDiagram {
  const { assembly } = motionOf(train);
  const labelOf = (name: string) => assembly.bodies[assembly.bodyOf(name) ?? 0]?.label ?? CASE;
  const ties = train.devices.map(({ first, second }) => [labelOf(first), labelOf(second)] as const);
  const levers = placed(arranged(blocksOf(train), ties), width);
  const axes = levers.flat();
  const foot = TOP + SPAN;
  const [members, xs] = [axes.map(({ member }) => member), axes.map(({ x }) => x)];
  const { names, right, low } = nameAxes(members.map(nameOf), xs, foot);
  const placeOf = new Map(axes.map((axis, k) => [axis, names[k] as AxisName]));
  return {
    name: train.name,
    width: Math.max(right, ...xs.map((x) => x + 60), 200) + 12,
    height: low,
    top: TOP,
    foot,
    levers: levers.map((lever) =>
      lever.map((axis) => ({
        ...axis,
        ...(placeOf.get(axis) as AxisName),
      })),
    ),
    joined: [...new Set(members)].flatMap((member) => {
      const own = axes.flatMap((axis) => (axis.member === member ? [axis.x] : []));
      return own.length > 1 && member !== CASE ? [{ member, xs: own }] : [];
    }),
    devices: train.devices.map((device) => {
      const isHeld = labelOf(device.first) === CASE;
      const [held, other] = isHeld ? [device.second, device.first] : [device.first, device.second];
      return { device, ...nearest(levers, labelOf(held), labelOf(other)) };
    }),
  };
}

type Axis = Pick<DiagramNode, 'member' | 'x'>;

// A block for each lever, and one for each member that no set knows: races, drums between two
// clutches.
function blocksOf(train: Train): Block[] {
  const motion = motionOf(train);
  const { bodies, bodyOf } = motion.assembly;
  const labelOf = (body: number) => bodies[body]?.label ?? CASE;
  const blocks = compoundLevers(leversOf(motion)).map(({ nodes }): Block => {
    return nodes.map(({ body, at }) => ({ member: labelOf(body), at: toNumber(at) }));
  });
  const known = new Set([CASE, ...blocks.flat().map(({ member }) => member)]);
  const ports = motion.assembly.gearing.members;
  const others = train.devices.flatMap(({ first, second }) => [first, second]);
  for (const name of [train.input, ...outputsOf(train), ...ports, ...others]) {
    const member = labelOf(bodyOf(name) ?? 0);
    if (known.has(member) || motion.assembly.onPins.has(bodyOf(name) ?? 0)) continue;
    known.add(member);
    blocks.push([{ member, at: 0 }]);
  }
  return blocks;
}

// Arms are wide enough that no two nodes touch, where the places and the sheet allow that at all.
function placed(blocks: readonly Block[], width: number): Axis[][] {
  const between = width < 600 ? 44 : 64;
  const wishes = blocks.map((block) => {
    const gaps = block.slice(1).map(({ at }, k) => at - (block[k]?.at ?? 0));
    const least = Math.min(1, ...gaps.filter((gap) => gap > 1e-9));
    return block.length < 2 ? 0 : Math.min(Math.max(180, 56 / least), 420);
  });
  const wished = wishes.reduce((sum, wish) => sum + wish, 0);
  const room = width - SIDE - 90 - between * (blocks.length - 1);
  const scale = Math.min(1.25, Math.max(0.5, room / Math.max(1, wished)));
  let x = SIDE;
  return blocks.map((block, k) => {
    const length = (wishes[k] ?? 0) * scale;
    const axes = block.map(({ member, at }) => ({ member, x: x + at * length }));
    x += length + between;
    return axes;
  });
}

// The axes of two members that are nearest to one another; to the case it is no way.
function nearest(
  levers: readonly (readonly Axis[])[],
  first: string,
  second: string,
): Pick<LeverDevice, 'first' | 'second'> {
  const axes = levers.flat();
  const from = axes.filter(({ member }) => member === first);
  const [own = { member: first, x: 0 }] = from;
  if (second === CASE) return { first: own, second: { member: CASE, x: own.x } };
  const pairs = from.flatMap((a) => {
    return axes.flatMap((b) => (b.member === second ? [{ first: a, second: b }] : []));
  });
  const far = (pair: Pick<LeverDevice, 'first' | 'second'>) =>
    Math.abs(pair.first.x - pair.second.x);
  const [near] = pairs.toSorted((a, b) => far(a) - far(b));
  return near ?? { first: own, second: own };
}
