import { applyFault } from '../../engine/faults/index.ts';
import { flow } from '../../engine/flow/index.ts';
import { signOf } from '../../engine/linear/index.ts';
import { assemble } from '../../engine/train/index.ts';
import type { AskedGear } from './askedgear.ts';
import type { Draft, Wrong } from './draft.ts';
import type { Answer } from './question.ts';

type Turning = Extract<Answer, { answer: 'turning' }>['is'];
type Standing = Extract<Answer, { answer: 'state' }>['state'];

/** Does it drive, is it neutral, is it tied up? */
export function stateQuestion({ train, setting, worked }: AskedGear): Draft[] {
  const { state, facts } = worked.drive;
  const is = (of: Standing): Answer => ({ answer: 'state', state: of });
  const holds = [...worked.drive.devices.values()].some((work) => work.state === 'holding');
  const isHeld = standsStill(worked.drive) && setting.on.length < 2;
  const wrong: Record<Standing, readonly Wrong[]> = {
    driving: [
      [holds ? 'one-way never holds' : 'path unseen', is('neutral')],
      [isHeld ? 'holding stops all' : 'more devices tie up', is('tied up')],
    ],
    neutral: [
      ['applied means driving', is('driving')],
      ['neutral means still', is('tied up')],
    ],
    'tied up': [
      ['applied means driving', is('driving')],
      ['neutral means still', is('neutral')],
    ],
  };
  const subject = [{ kind: 'member', name: train.output }] as const;
  return [{ kind: 'state', subject, setting, right: is(state), wrong: wrong[state], facts }];
}

/** Which way does the output turn? Only of a gear that drives. */
export function wayQuestion({ train, setting, worked }: AskedGear): Draft[] {
  const { ratio, facts } = worked.drive;
  if (!ratio) return [];
  const is = (of: Turning): Answer => ({ answer: 'turning', is: of });
  const ahead = signOf(ratio) > 0;
  const wrong: Wrong[] = [
    ahead ? ['mesh reverses', is('anticlockwise')] : ['sign dropped', is('clockwise')],
    [standsStill(worked.drive) ? 'holding stops all' : 'path unseen', is('still')],
  ];
  const right = is(ahead ? 'clockwise' : 'anticlockwise');
  const subject = [{ kind: 'member', name: train.output }] as const;
  return [{ kind: 'way', subject, setting, right, wrong, facts }];
}

/** Asked of every gear that drives and does not tie up on coast. */
export function brakingQuestion({ train, setting, worked }: AskedGear): Draft[] {
  const { engineBraking, state, facts } = worked.coast;
  if (worked.drive.state !== 'driving' || state === 'tied up') return [];
  const is = (yes: boolean): Answer => ({ answer: 'yes or no', yes });
  const wrong: Wrong = [
    engineBraking ? 'one-way ends braking' : 'braking always',
    is(!engineBraking),
  ];
  const coasting = { ...setting, end: 'coast', output: worked.output } as const;
  const subject = [{ kind: 'member', name: train.input }] as const;
  const right = is(engineBraking);
  return [{ kind: 'engine braking', subject, setting: coasting, right, wrong: [wrong], facts }];
}

/** Which members does nothing settle? Only where there are some; members go by their bodies. */
export function freeQuestion({ train, setting, worked }: AskedGear): Draft[] {
  const { facts, state } = worked.drive;
  const free = facts.flatMap((fact) => (fact.fact === 'free' ? fact.members : []));
  // In neutral everything behind the input may turn: what of it is settled is a matter of words.
  if (state !== 'driving' || free.length === 0) return [];
  const { bodies, onPins, bodyOf } = assemble(train);
  const turning = bodies.flatMap(({ label }, body) => {
    return body === 0 || onPins.has(body) || body === bodyOf(train.input) ? [] : [label];
  });
  const output = bodies[bodyOf(train.output) ?? 0]?.label ?? train.output;
  const are = (members: readonly string[]): Answer => ({ answer: 'members', members });
  const wrong: Wrong[] = [
    ['always settled', are([])],
    ['nothing settles it', are(turning)],
    ['nothing settles it', are(turning.filter((name) => !free.includes(name)))],
    ['always settled', are(free.filter((name) => name !== output))],
  ];
  const subject = [{ kind: 'member', name: train.output }] as const;
  return [{ kind: 'left free', subject, setting, right: are(free), wrong, facts }];
}

/** What a one-way clutch that is fitted backwards does to a gear in which it says something. */
export function backwardsQuestions({ train, setting, worked }: AskedGear): Draft[] {
  return train.devices.flatMap((device): Draft[] => {
    const state = worked.drive.devices.get(device.name)?.state;
    if (device.kind !== 'one-way' || device.stuck || state === 'free') return [];
    const fault = { what: 'one-way', device: device.name, is: 'backwards' } as const;
    const wrong: Wrong[] = [
      ['fits either way', outputOf(worked.drive)],
      ['fault means no drive', { answer: 'state', state: 'neutral' }],
      ['fault ties up', { answer: 'state', state: 'tied up' }],
    ];
    const found = flow(applyFault(train, fault), setting.on).drive;
    const subject = [{ kind: 'device', name: device.name }] as const;
    const right = outputOf(found);
    const asked = { ...setting, fault };
    return [{ kind: 'backwards', subject, setting: asked, right, wrong, facts: found.facts }];
  });
}

/** Whether something stands still and takes a reaction. */
function standsStill({ facts }: Pick<ReturnType<typeof flow>['drive'], 'facts'>): boolean {
  return facts.some(({ fact }) => fact === 'holds' || fact === 'fixed');
}

function outputOf({ state, ratio }: ReturnType<typeof flow>['drive']): Answer {
  return { answer: 'state', state, ...(ratio && { ratio }) };
}
