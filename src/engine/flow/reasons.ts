import { type Rational, signOf } from '../linear/index.ts';
import {
  isSpan,
  isZero,
  type Quantity,
  sharedReactions,
  sizeOf,
  speedAt,
  type Verdict,
} from '../reckon/index.ts';
import type { Device, MemberName, Way } from '../train/index.ts';
import type { DeviceWork, State } from './answer.ts';
import { type Element, pushOf, type Touch } from './element.ts';
import type { End, Fact } from './fact.ts';
import type { Observed } from './observed.ts';
import { flowTo, pathOf, type Stage } from './path.ts';
import { type Circling, isSolid } from './power.ts';

/** What is known of a gear when its reasons are to be told. */
export interface Known {
  readonly verdict: Verdict;
  readonly turned: End;
  readonly state: State;
  readonly observed: Observed;
  readonly elements: readonly Element[];
  readonly devices: ReadonlyMap<string, DeviceWork>;
  readonly outputs: ReadonlyMap<MemberName, Quantity>;
  readonly recirculating: Circling;
}

/** The reasons in the order in which the load travels, read off the certificate. */
export function reasonsOf(known: Known): Fact[] {
  const { verdict, turned, state, observed, elements, devices, outputs, recirculating } = known;
  const { question, motion } = verdict;
  const given = question.given[0] as { member: MemberName; speed: Rational };
  const other: End = turned === 'input' ? 'output' : 'input';
  const load = question.reluctant as string;
  const start = { member: labelOf(verdict, given.member), end: turned, way: wayOf(given.speed) };
  const facts: Fact[] = [{ fact: 'turned', ...start }];
  const ends = turned === 'output' ? (question.tied ?? [given.member]) : [given.member];
  facts.push(...pathFacts(verdict, elements, ends));
  facts.push(...sharedFacts(verdict, devices));
  if (state === 'tied up') return [...facts, { fact: 'tied up', ...start }];
  facts.push(...looseFacts(verdict, devices));
  const end = { member: labelOf(verdict, load), end: other };
  if (state === 'neutral') facts.push({ fact: 'neutral', ...end });
  else
    facts.push({ fact: 'result', ...end, speed: speedAt(verdict, load) }, ...shareFacts(outputs));
  facts.push(...circlingFacts(recirculating));
  if (turned === 'output') facts.push(brakingFact(motion.train.devices, state, devices));
  return [...facts, ...freeFacts(verdict, observed)];
}

/** The reasons where several speeds are given. */
export function reasonsAt(known: Omit<Known, 'turned' | 'outputs'>): Fact[] {
  const { verdict, state, observed, elements, devices, recirculating } = known;
  const { given, reluctant } = verdict.question;
  const facts = given.map(({ member, speed }): Fact => {
    return { fact: 'given', member: labelOf(verdict, member), speed };
  });
  facts.push(
    ...pathFacts(
      verdict,
      elements,
      given.map(({ member }) => member),
    ),
  );
  facts.push(...sharedFacts(verdict, devices));
  const end = { member: labelOf(verdict, reluctant as string), end: 'output' } as const;
  if (state === 'tied up') return [...facts, { fact: 'tied up', ...end, way: 'clockwise' }];
  facts.push(...looseFacts(verdict, devices));
  const speed = observed.members.get(reluctant as string);
  if (speed && !isSpan(speed)) facts.push({ fact: 'result', ...end, speed });
  return [...facts, ...circlingFacts(recirculating), ...freeFacts(verdict, observed)];
}

// How the load is shared, where there are several outputs.
function shareFacts(outputs: ReadonlyMap<MemberName, Quantity>): Fact[] {
  if (outputs.size < 2) return [];
  const shares = [...outputs].map(([member, torque]) => ({ member, torque: sizeOf(torque) }));
  return [{ fact: 'outputs', shares }];
}

function circlingFacts({ power, sets }: Circling): Fact[] {
  return power.num === 0 ? [] : [{ fact: 'recirculates', power, sets }];
}

/** What each loaded element does, along the path from the bodies of some members. */
export function pathFacts(
  verdict: Verdict,
  elements: readonly Element[],
  start: readonly MemberName[],
): Fact[] {
  const { assembly } = verdict.motion;
  const speeds = assembly.bodies.map(({ label }) => speedAt(verdict, label));
  const bodies = start.map((member) => assembly.bodyOf(member) as number);
  return pathOf(elements, bodies, speeds).flatMap((stage) => stageFacts(verdict, stage, speeds));
}

function stageFacts(
  verdict: Verdict,
  { element, from }: Stage,
  speeds: readonly Rational[],
): Fact[] {
  if (element.device) return [deviceFact(element, element.device, from, speeds)];
  const { touches, name } = element;
  const moving = touches.filter(({ body }) => body !== 0);
  if (verdict.motion.train.pairs.some((pair) => pair.name === name)) {
    const [a, b] = fromTo(moving, from, speeds);
    if (!a || !b) return [];
    const push = { pushed: pushOf(b), torque: sizeOf(b.torque) };
    return [{ fact: 'meshes', pair: name, from: a.member, to: b.member, ...push }];
  }
  const ports = touches.map((touch) => {
    const flow = flowTo(touch, speeds);
    const leads = flow < 0 || (!verdict.turns && touch.body === from);
    const role = leads ? 'drives' : flow > 0 ? 'driven' : 'reacts';
    const { member, torque } = touch;
    const label = labelOf(verdict, member);
    return { member, label, role, pushed: pushOf(touch), torque: sizeOf(torque) } as const;
  });
  const turns = speeds[touches[0]?.body ?? 0]?.num !== 0;
  if (turns && isSolid(element, speeds)) return [{ fact: 'as one', set: name, ports }];
  const fixed = touches.filter(({ body }) => body === 0);
  return [
    { fact: 'works', set: name, ports },
    ...fixed.map((touch): Fact => {
      const { member, torque } = touch;
      return { fact: 'fixed', member, pushed: pushOf(touch), torque: sizeOf(torque) };
    }),
  ];
}

function deviceFact(
  element: Element,
  { name, kind }: Device,
  from: number,
  speeds: readonly Rational[],
): Fact {
  const common = { device: name, kind };
  const held = element.touches.filter(({ body }) => body !== 0);
  const [only] = held;
  if (held.length === 1 && only) {
    // The device pushes the member back; the member is pushed onto the device.
    const pushed = pushOf(only) === 'clockwise' ? 'anticlockwise' : 'clockwise';
    return { fact: 'holds', ...common, member: only.member, pushed, torque: sizeOf(only.torque) };
  }
  const [a, b] = fromTo(held, from, speeds) as [Touch, Touch];
  const push = { pushed: pushOf(b), torque: sizeOf(b.torque) };
  return { fact: 'carries', ...common, from: a.member, to: b.member, ...push };
}

// The giving side first: by power, or by the side from which the load came.
function fromTo(touches: readonly Touch[], from: number, speeds: readonly Rational[]) {
  const giving = (touch: Touch) => flowTo(touch, speeds) - (touch.body === from ? 0.5 : 0);
  return touches.toSorted((a, b) => giving(a) - giving(b));
}

// A fact a reaction: the devices on the suns of two sets have nothing to share.
function sharedFacts(verdict: Verdict, works: ReadonlyMap<string, DeviceWork>): Fact[] {
  const { devices } = verdict.motion.train;
  const loose = devices.flatMap(({ name }, d) => {
    const work = works.get(name);
    return work && isSpan(work.torque) ? [d] : [];
  });
  return sharedReactions(verdict, loose).map((group): Fact => {
    return { fact: 'shares', devices: group.map((d) => (devices[d] as Device).name) };
  });
}

// One-way clutches that over-run, and friction devices that are on for nothing.
function looseFacts({ motion }: Verdict, works: ReadonlyMap<string, DeviceWork>): Fact[] {
  const { devices } = motion.train;
  const workOf = (device: Device) => works.get(device.name) as DeviceWork;
  const running = devices.filter((device) => workOf(device).state === 'over-running');
  const facts: Fact[] = running.map((device) => {
    return { fact: 'over-runs', device: device.name, slip: sizeOf(workOf(device).slip) };
  });
  for (const device of devices) {
    const { state, torque } = workOf(device);
    if (state !== 'applied' || !isZero(torque)) continue;
    const { bodyOf } = motion.assembly;
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

function brakingFact(
  devices: readonly Device[],
  state: State,
  works: ReadonlyMap<string, DeviceWork>,
): Fact {
  const running = devices.filter(({ name, kind }) => {
    return kind === 'one-way' && works.get(name)?.state === 'over-running';
  });
  const overRunning = state === 'driving' ? [] : running.map(({ name }) => name);
  return { fact: 'engine braking', there: state === 'driving', overRunning };
}

/** The bodies whose speed nothing settles, planets left out. */
export function freeFacts({ motion }: Verdict, { bodies }: Observed): Fact[] {
  const { assembly } = motion;
  const free = assembly.bodies.filter((_, body) => {
    return isSpan(bodies[body] as Quantity) && !assembly.onPins.has(body);
  });
  return free.length > 0 ? [{ fact: 'free', members: free.map(({ label }) => label) }] : [];
}

/** The name that sentences use for a member. */
export function labelOf({ motion }: Verdict, member: MemberName): MemberName {
  const { bodies, bodyOf } = motion.assembly;
  return bodies[bodyOf(member) as number]?.label ?? member;
}

function wayOf(signed: Rational): Way {
  return signOf(signed) < 0 ? 'anticlockwise' : 'clockwise';
}
