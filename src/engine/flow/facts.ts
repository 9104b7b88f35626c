import { type Rational, signOf } from '../linear/index.ts';
import type { GivenSpeed } from '../motion/index.ts';
import { isSpan, isZero, sharedLoads, sharedReactions, sizeOf, speedAt } from '../reckon/index.ts';
import { CASE, type Device, type End, type MemberName, type Way } from '../train/index.ts';
import type { DeviceWork } from './answer.ts';
import type { Carried } from './carried.ts';
import { turningRound } from './circling.ts';
import {
  type Element,
  flowTo,
  isSolid,
  isUnsettled,
  onCase,
  pushOf,
  type Touch,
} from './element.ts';
import type { Fact } from './fact.ts';
import { pathOf, type PathStage } from './path.ts';
import type { Work } from './work.ts';

/** The reasons in the order in which the load travels, read off the certificate. */
export function factsOf(work: Work): Fact[] {
  const { carried, turned, answer } = work;
  const { question } = carried.ruling;
  const given = question.given.map(({ member }) => member);
  const start = turned === 'output' ? (question.tied ?? given) : given;
  const facts = [...beginning(work), ...pathFacts(carried, start), ...sharedFacts(carried)];
  if (answer.state === 'tied up') return [...facts, tiedUp(work)];
  return [
    ...facts,
    ...looseFacts(work),
    ...outcome(work),
    ...circlingFacts(work),
    ...(turned === 'output' ? [brakingFact(work)] : []),
    ...freeFacts(carried),
  ];
}

function beginning({ carried, turned }: Work): Fact[] {
  const { given } = carried.ruling.question;
  if (turned) return [{ fact: 'turned', ...turnedEnd(carried, turned) }];
  return given.map(({ member, speed }) => ({
    fact: 'given',
    member: labelOf(carried, member),
    speed,
  }));
}

function turnedEnd(carried: Carried, end: End) {
  const { member, speed } = carried.ruling.question.given[0] as GivenSpeed;
  return { member: labelOf(carried, member), end, way: wayOf(speed) } as const;
}

// Where several speeds are given it is the output that cannot follow.
function tiedUp({ carried, turned }: Work): Fact {
  if (turned) return { fact: 'tied up', ...turnedEnd(carried, turned) };
  const { member, end } = farEnd(carried, turned);
  return { fact: 'tied up', member, end, way: 'clockwise' };
}

// The reluctant end.
function farEnd(carried: Carried, turned: End | undefined) {
  const load = carried.ruling.question.reluctant as MemberName;
  const end: End = turned === 'output' ? 'input' : 'output';
  return { load, member: labelOf(carried, load), end };
}

/** How the other end turns, and how several outputs share the load. */
function outcome({ carried, turned, answer }: Work): Fact[] {
  const { load, member, end } = farEnd(carried, turned);
  if (!turned) {
    const speed = carried.observed.members.get(load);
    return !speed || isSpan(speed) ? [] : [{ fact: 'result', member, end, speed }];
  }
  if (answer.state === 'neutral') return [{ fact: 'neutral', member, end }];
  const speed = speedAt(carried.ruling, load);
  const shares = [...answer.outputs].map(([its, torque]) => ({
    member: its,
    torque: sizeOf(torque),
  }));
  const shared: Fact[] = shares.length < 2 ? [] : [{ fact: 'outputs', shares }];
  return [{ fact: 'result', member, end, speed }, ...shared];
}

function circlingFacts({
  carried,
  answer: { recirculating: power, circling: sets },
}: Work): Fact[] {
  const round = turningRound(carried.elements);
  const names = (devices: boolean) => {
    return round.filter(({ device }) => !device === !devices).map(({ name }) => name);
  };
  return [
    ...(power.num === 0 ? [] : [{ fact: 'recirculates', power, sets } as const]),
    ...(round.length === 0
      ? []
      : [{ fact: 'goes round', sets: names(false), devices: names(true) } as const]),
  ];
}

/** What each loaded element does, along the path from the bodies of some members. */
export function pathFacts(carried: Carried, start: readonly MemberName[]): Fact[] {
  const bodies = start.map((member) => labelOf(carried, member));
  const unsettled = carried.elements.filter(
    (element) => !element.device && !turnsAsOne(element) && isUnsettled(element),
  );
  const groups = sharedLoads(
    carried.ruling,
    unsettled.map(({ name }) => name),
  );
  const told = new Set<readonly string[]>();
  return pathOf(carried.elements, bodies).flatMap((stage): Fact[] => {
    const sets = groups.find((group) => group.includes(stage.element.name));
    if (!sets) return stageFacts(carried, stage);
    // Told of all of them where the load comes to the first.
    if (told.has(sets)) return [];
    told.add(sets);
    return [{ fact: 'sets share', sets }];
  });
}

function turnsAsOne(element: Element): boolean {
  return element.touches[0]?.speed.num !== 0 && isSolid(element);
}

function stageFacts({ ruling }: Carried, { element, from }: PathStage): Fact[] {
  if (element.device) return [deviceFact(element, element.device, from)];
  const { touches, name } = element;
  if (ruling.motion.train.pairs.some((pair) => pair.name === name)) {
    const wheels = touches.filter(({ member }) => member !== CASE);
    const [a, b] = fromTo(wheels, from) as [Touch, Touch];
    const push = { pushed: pushOf(b), torque: sizeOf(b.torque) };
    const meshes: Fact = { fact: 'meshes', pair: name, from: a.member, to: b.member, ...push };
    return [meshes, ...wheels.filter(onCase).map(fixedFact)];
  }
  const ports = touches.map((touch) => {
    const flow = flowTo(touch);
    const leads = flow < 0 || (!ruling.turns && touch.body === from);
    const role = leads ? 'drives' : flow > 0 ? 'driven' : 'reacts';
    const { member, body: label, torque } = touch;
    return { member, label, role, pushed: pushOf(touch), torque: sizeOf(torque) } as const;
  });
  if (turnsAsOne(element)) return [{ fact: 'as one', set: name, ports }];
  return [{ fact: 'works', set: name, ports }, ...touches.filter(onCase).map(fixedFact)];
}

function fixedFact(touch: Touch): Fact {
  const { member, torque } = touch;
  return { fact: 'fixed', member, pushed: pushOf(touch), torque: sizeOf(torque) };
}

function deviceFact({ touches }: Element, { name, kind }: Device, from: MemberName): Fact {
  const common = { device: name, kind };
  const held = touches.filter(isMoving);
  const [only] = held;
  if (held.length === 1 && only) {
    // The device pushes the member back; the member is pushed onto the device.
    const pushed = pushOf(only) === 'clockwise' ? 'anticlockwise' : 'clockwise';
    return { fact: 'holds', ...common, member: only.member, pushed, torque: sizeOf(only.torque) };
  }
  const [a, b] = fromTo(held, from) as [Touch, Touch];
  const push = { pushed: pushOf(b), torque: sizeOf(b.torque) };
  return { fact: 'carries', ...common, from: a.member, to: b.member, ...push };
}

function isMoving(touch: Touch): boolean {
  return !onCase(touch);
}

// The giving side first: by power, or by the side from which the load came.
function fromTo(touches: readonly Touch[], from: MemberName): Touch[] {
  const giving = (touch: Touch) => flowTo(touch) - (touch.body === from ? 0.5 : 0);
  return touches.toSorted((a, b) => giving(a) - giving(b));
}

// A fact a reaction: the devices on the suns of two sets have nothing to share.
function sharedFacts({ ruling, torques }: Carried): Fact[] {
  const loose = [...torques.devices].flatMap(([device, torque]) =>
    isSpan(torque) ? [device] : [],
  );
  return sharedReactions(ruling, loose).map((group): Fact => {
    return { fact: 'shares', devices: group.map(({ name }) => name) };
  });
}

// One-way clutches that over-run, and friction devices that are on for nothing.
function looseFacts({ carried, answer }: Work): Fact[] {
  const { train, assembly } = carried.ruling.motion;
  const workOf = ({ name }: Device) => answer.devices.get(name) as DeviceWork;
  const running = train.devices.filter((device) => workOf(device).state === 'over-running');
  const facts: Fact[] = running.map((device) => {
    return { fact: 'over-runs', device: device.name, slip: sizeOf(workOf(device).slip) };
  });
  for (const device of train.devices) {
    const { state, torque } = workOf(device);
    if (state !== 'applied' || !isZero(torque)) continue;
    const { bodyOf } = assembly;
    const bodies = new Set([device.first, device.second].map(bodyOf));
    bodies.delete(0);
    const because = running.find(({ first, second }) => {
      return bodies.has(bodyOf(first)) || bodies.has(bodyOf(second));
    });
    const why = because && { overRunning: because.name };
    facts.push({ fact: 'idle', device: device.name, ...why });
  }
  return facts;
}

function brakingFact({ answer: { state, devices } }: Work): Fact {
  const there = state === 'driving';
  const running = [...devices].filter(([, work]) => work.state === 'over-running');
  return { fact: 'engine braking', there, overRunning: there ? [] : running.map(([name]) => name) };
}

/** The bodies whose speed nothing settles, planets left out. */
export function freeFacts({ ruling, observed }: Carried): Fact[] {
  const { bodies, onPins } = ruling.motion.assembly;
  const free = bodies.filter(({ label }, body) => {
    return isSpan(observed.speedOf(label)) && !onPins.has(body);
  });
  return free.length > 0 ? [{ fact: 'free', members: free.map(({ label }) => label) }] : [];
}

/** The name that sentences use for a member. */
export function labelOf({ ruling }: Pick<Carried, 'ruling'>, member: MemberName): MemberName {
  const { bodies, bodyOf } = ruling.motion.assembly;
  return bodies[bodyOf(member) as number]?.label ?? member;
}

function wayOf(signed: Rational): Way {
  return signOf(signed) < 0 ? 'anticlockwise' : 'clockwise';
}
