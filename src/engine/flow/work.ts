import { ONE, opposite, over, plus, type Rational, signOf, times, ZERO } from '../linear/index.ts';
import { willis } from '../motion/index.ts';
import {
  isSpan,
  isZero,
  type Quantity,
  rowOf,
  speedAt,
  stretched,
  type Ruling,
} from '../reckon/index.ts';
import type { End, MemberName, Mesh } from '../train/index.ts';
import type { Branch, DeviceWork, MeshWork, Working } from './answer.ts';
import type { Carried } from './carried.ts';
import { circlingPower } from './circling.ts';
import { efficiencyOf, type MeshEfficiency } from './efficiency.ts';

/** The end of the train that is turned once; absent where members are given speeds. */
export type Turned = End | undefined;

/** All that is told of a gear but the reasons, and what it was made from. */
export interface Work {
  readonly carried: Carried;
  readonly turned: Turned;
  readonly answer: Omit<Working, 'facts'>;
}

/** What is carried as all that can be told of it. `losses` are those of a train that drives. */
export function workOf(carried: Carried, turned: Turned, losses?: MeshEfficiency): Work {
  const { ruling, state, observed, torques, elements } = carried;
  const driving = turned !== undefined && state === 'driving';
  const efficiency = driving && losses && efficiencyOf(carried, losses);
  const ends = endTorques(carried, turned);
  const whole = powerPutIn(carried);
  const circling = circlingPower(elements, whole);
  const answer = {
    state,
    ...(driving && { ratio: ratioOf(ruling, turned) }),
    speeds: observed.members,
    drawn: observed.drawn,
    onPins: observed.onPins,
    torques: balanced(ends),
    outputs: outputTorques(carried, ends.get('output') as Quantity),
    devices: deviceWork(carried),
    meshes: [...torques.meshes].map(meshWork),
    branches: branchWork(carried, whole),
    recirculating: circling.power,
    circling: circling.sets,
    ...(efficiency && { efficiency }),
  };
  return { carried, turned, answer };
}

/** Input speed over output speed; the train must drive. */
export function ratioOf(ruling: Ruling, turned: End): Rational {
  const { reluctant, given } = ruling.question;
  const far = speedAt(ruling, reluctant as MemberName);
  const own = given[0]?.speed ?? ONE;
  return turned === 'input' ? over(own, far) : over(far, own);
}

function endTorques({ ruling, torques }: Carried, turned: Turned): Map<string, Quantity> {
  const { given, reluctant } = torques;
  if (!turned) return new Map([...given, ['output', reluctant]]);
  const own = given.get(ruling.question.given[0]?.member as MemberName) as Quantity;
  const [input, output] = turned === 'input' ? [own, reluctant] : [reluctant, own];
  return new Map([
    ['input', input],
    ['output', output],
  ]);
}

// The torques of the ends, and what they do not balance, which the case does.
function balanced(ends: ReadonlyMap<string, Quantity>): Map<string, Quantity> {
  const sum = total([...ends.values()]);
  return new Map([...ends, ['case', sum ? opposite(sum) : { from: null, to: null }]]);
}

// The sum of settled quantities; undefined if one is not.
function total(quantities: readonly Quantity[]): Rational | undefined {
  let sum = ZERO;
  for (const quantity of quantities) {
    if (isSpan(quantity)) return undefined;
    sum = plus(sum, quantity);
  }
  return sum;
}

// What the load puts on each output: all of it on the one, or what the road shares out.
function outputTorques(
  { ruling, torques }: Carried,
  all: Quantity,
): ReadonlyMap<MemberName, Quantity> {
  if (torques.tied.size > 1) return torques.tied;
  return new Map([[ruling.question.tied?.[0] ?? ruling.motion.train.output, all]]);
}

/** What each device does, by its name. */
export function deviceWork({ ruling, observed, torques }: Carried): Map<string, DeviceWork> {
  return new Map(
    [...torques.devices].map(([device, torque]): [string, DeviceWork] => {
      const slip = observed.slips.get(device) as Quantity;
      const there = rowOf(ruling, device) !== undefined;
      if (device.kind !== 'one-way') {
        return [device.name, { state: there ? 'applied' : 'released', slip, torque }];
      }
      const holds = !isZero(torque);
      const runs = there && !holds && overRuns(slip);
      const state = holds ? 'holding' : runs ? 'over-running' : 'free';
      return [device.name, { state, slip, torque }];
    }),
  );
}

// Whether the races surely turn against each other.
function overRuns(slip: Quantity): boolean {
  if (!isSpan(slip)) return slip.num !== 0;
  return (slip.from !== null && slip.from.num > 0) || (slip.to !== null && slip.to.num < 0);
}

function meshWork([mesh, multiplier]: [Mesh, Quantity]): MeshWork {
  const [onA, onB] = willis(mesh).map(([, num]) => stretched(multiplier, { num, den: 1 })) as [
    Quantity,
    Quantity,
  ];
  return { within: mesh.within, a: mesh.a.member, b: mesh.b.member, onA, onB };
}

function branchWork({ observed, torques }: Carried, whole: Rational): Branch[] {
  return [...torques.ports].map(([{ within, member }, torque]) => {
    const power = share(torque, observed.speedOf(member), whole);
    return { within, member, torque, power };
  });
}

// The power that a body brings: against the torque on it, as a part of the whole.
function share(torque: Quantity, speed: Quantity, whole: Rational): Quantity {
  if (isZero(torque) || isZero(speed) || whole.num === 0) return ZERO;
  const by = over({ num: -1, den: 1 }, whole);
  if (!isSpan(speed)) return stretched(torque, times(speed, by));
  return isSpan(torque) ? { from: null, to: null } : stretched(speed, times(torque, by));
}

// What the given ends that drive bring in together.
function powerPutIn({ ruling, proved }: Carried): Rational {
  return ruling.question.given.reduce((sum, { member, speed }) => {
    const power = times(proved.given.get(member) as Rational, speed);
    return signOf(power) > 0 ? plus(sum, power) : sum;
  }, ZERO);
}
