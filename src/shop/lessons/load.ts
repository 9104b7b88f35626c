import { type DeviceWork, isSpan } from '../../engine/flow/index.ts';
import {
  equal,
  minus,
  ONE,
  opposite,
  plus,
  type Rational,
  signOf,
  ZERO,
} from '../../engine/linear/index.ts';
import { CASE, type Device, isApplied, type Way } from '../../engine/train/index.ts';
import type { AskedGear } from './askedgear.ts';
import type { Draft, Wrong } from './draft.ts';
import type { Answer } from './question.ts';

type Doing = Extract<Answer, { answer: 'device' }>['does'];

/** Does a device carry, is it idle, does it over-run? Only of those that the engine settles. */
export function deviceQuestions({ train, setting, worked }: AskedGear): Draft[] {
  if (worked.drive.state !== 'driving') return [];
  return train.devices.flatMap((device): Draft[] => {
    const does = doing(worked.drive.devices.get(device.name));
    if (!does) return [];
    const is = (what: Doing): Answer => ({ answer: 'device', does: what });
    const wrong = wrongDoings(device, does).map(([idea, what]): Wrong => [idea, is(what)]);
    const subject = [{ kind: 'device', name: device.name }] as const;
    const { facts } = worked.drive;
    return [{ kind: 'device', subject, setting, right: is(does), wrong, facts }];
  });
}

/** Which devices carry the load? Not where a reaction is shared, or nothing carries. */
export function carriersQuestion({ train, setting, worked }: AskedGear): Draft[] {
  const { state, facts } = worked.drive;
  const works = train.devices.map((device) => {
    const work = worked.drive.devices.get(device.name);
    return { device, work, does: doing(work) };
  });
  const torn = works.some(({ work }) => work !== undefined && isSpan(work.torque));
  const named = (chosen: typeof works) => chosen.map(({ device }) => device.name);
  const carrying = works.filter(({ does }) => does === 'carries');
  if (state !== 'driving' || torn || carrying.length === 0) return [];
  const are = (chosen: typeof works): Answer => ({ answer: 'devices', devices: named(chosen) });
  const applied = works.filter(({ work }) => work?.state === 'applied');
  const isOneWay = ({ device }: (typeof works)[number]) => device.kind === 'one-way';
  // Where all that is on carries, what this idea gets wrong is the one-way clutches.
  const leavesOut = applied.every((it) => carrying.includes(it));
  const overRunning = works.filter(({ does }) => does === 'over-runs');
  const wrong: Wrong[] = [
    [leavesOut ? 'one-way never holds' : 'applied means carrying', are(applied)],
    ['one-way always holds', are(works.filter((it) => applied.includes(it) || isOneWay(it)))],
    ['one-way never holds', are(carrying.filter((it) => !isOneWay(it)))],
    ['one-way turned round', are([...carrying.filter((it) => !isOneWay(it)), ...overRunning])],
    ['released by sharing', are(carrying.slice(0, -1))],
  ];
  const told = wrong.filter(([, its]) => its.answer !== 'devices' || its.devices.length > 0);
  const subject = named(carrying).map((name) => ({ kind: 'device', name }) as const);
  return [{ kind: 'carriers', subject, setting, right: are(carrying), wrong: told, facts }];
}

/**
 * What a member that stands still puts on what holds it, per unit of input torque. On a train
 * with one such member it is output less input, for all torques on a train add up to nothing.
 */
export function heldQuestions({ setting, worked }: AskedGear): Draft[] {
  const { ratio, facts } = worked.drive;
  if (!ratio) return [];
  return facts.flatMap((fact): Draft[] => {
    if (fact.fact !== 'holds' && fact.fact !== 'fixed') return [];
    const { torque, pushed, member } = fact;
    if (isSpan(torque) || signOf(torque) === 0 || member === CASE) return [];
    const is = (size: Rational, way: Way | null): Answer => {
      return { answer: 'torque', size, pushed: signOf(size) === 0 ? null : way };
    };
    const output = signOf(ratio) < 0 ? opposite(ratio) : ratio;
    const sum = plus(output, ONE);
    const difference = minus(output, ONE);
    const gap = signOf(difference) < 0 ? opposite(difference) : difference;
    const [fitting, mistaken] = signOf(ratio) < 0 ? [sum, gap] : [gap, sum];
    // With a second reaction the sum of both ends is no rule for either.
    const isAlone = equal(signOf(torque) < 0 ? opposite(torque) : torque, fitting);
    // Who takes one end's torque for the reaction takes the greater one.
    const ends: Wrong[] = [
      ['reaction is the output', is(output, pushed)],
      ['reaction is the input', is(ONE, pushed)],
    ];
    const wrong: Wrong[] = [
      ['still means no torque', is(ZERO, null)],
      ['reaction turned round', is(torque, otherWay(pushed))],
      ...(isAlone ? [['reaction added up', is(mistaken, pushed)] satisfies Wrong] : []),
      ...(signOf(difference) < 0 ? ends.toReversed() : ends),
    ];
    const subject = [
      { kind: 'member', name: member },
      ...(fact.fact === 'holds' ? [{ kind: 'device', name: fact.device } as const] : []),
    ] as const;
    const right = is(torque, pushed);
    return [{ kind: 'held torque', subject, setting, right, wrong, facts }];
  });
}

// Undefined where it does none of the three, or where its torque is not settled.
function doing(work: DeviceWork | undefined): Doing | undefined {
  if (!work || isSpan(work.torque)) return undefined;
  const loaded = signOf(work.torque) !== 0;
  if (work.state === 'over-running') return 'over-runs';
  if (work.state === 'applied') return loaded ? 'carries' : 'idle';
  return work.state === 'holding' && loaded ? 'carries' : undefined;
}

function wrongDoings(device: Device, does: Doing): readonly (readonly [Wrong[0], Doing])[] {
  if (isApplied(device)) {
    const slips = ['friction slips one way', 'over-runs'] as const;
    if (does === 'idle') return [['applied means carrying', 'carries'], slips];
    return [['released by sharing', 'idle'], slips];
  }
  if (does === 'over-runs') {
    return [
      ['one-way always holds', 'carries'],
      ['over-running unseen', 'idle'],
    ];
  }
  return [
    ['one-way turned round', 'over-runs'],
    ['one-way never holds', 'idle'],
  ];
}

function otherWay(way: Way): Way {
  return way === 'clockwise' ? 'anticlockwise' : 'clockwise';
}
