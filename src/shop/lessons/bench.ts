import { applyFault } from '../../engine/faults/index.ts';
import { isSpan, type Quantity } from '../../engine/flow/index.ts';
import { hand, type HandAnswer, type HandCheck, handChecks } from '../../engine/hand/index.ts';
import { type Rational, signOf } from '../../engine/linear/index.ts';
import { assemble, type Train, type Way } from '../../engine/train/index.ts';
import { shuffled } from './chance.ts';
import type { Draft, Wrong } from './draft.ts';
import type { Answer } from './question.ts';

type Turning = Extract<Answer, { answer: 'turning' }>['is'];

// Checks that are looked at, and questions of each right answer: enough for a lesson.
const MOST_CHECKS = 40;
const MOST_ALIKE = 2;

/** Hold one member, turn another: does it turn, and which way does a third go? */
export function* handQuestions(train: Train, seed: number): Generator<Draft, void> {
  const { bodies, onPins } = assemble(train);
  const labels = bodies.flatMap(({ label }, body) =>
    body === 0 || onPins.has(body) ? [] : [label],
  );
  const turnedRound = withOneWaysTurned(train);
  const alike = new Map<string, number>();
  const checks = shuffled(
    handChecks(train).filter(({ hold }) => hold.length === 1),
    seed,
    'hand checks',
  );
  for (const check of checks.slice(0, MOST_CHECKS)) {
    const others = labels.filter((name) => name !== check.turn && !check.hold.includes(name));
    const inTurn = shuffled(others, seed, `${check.hold} ${check.turn}`);
    const answer = hand(train, check);
    const watched = inTurn.find((name) => canBeAsked(train, check, answer, name));
    if (watched === undefined) continue;
    const is = turningOf(answer, watched);
    const count = (alike.get(is) ?? 0) + 1;
    alike.set(is, count);
    if (count > MOST_ALIKE) continue;
    const mirrored = turningOf(hand(turnedRound, check), watched);
    const wrong = wrongTurns(is, mirrored, check.way).map(([idea, what]): Wrong => {
      return [idea, { answer: 'turning', is: what }];
    });
    const subject = [
      { kind: 'member', name: watched },
      ...[check.turn, ...check.hold].map((name) => ({ kind: 'member', name }) as const),
    ] as const;
    const right: Answer = { answer: 'turning', is };
    yield { kind: 'hand', subject, setting: settingOf(check), right, wrong, facts: answer.facts };
  }
}

function settingOf({ hold, turn, way, on }: HandCheck) {
  return { on, end: 'hand', hold, turn: { member: turn, way } } as const;
}

// Not of what may go one way alone, and which way it goes is known; nor, where it locks, of what a hand
// could still turn.
function canBeAsked(train: Train, check: HandCheck, answer: HandAnswer, watched: string): boolean {
  if (answer.turns) {
    const speed = answer.moves.get(watched);
    if (speed === undefined || !isSpan(speed)) return true;
    const { from, to } = speed;
    return (from === null || signOf(from) < 0) && (to === null || signOf(to) > 0);
  }
  const hold = [...check.hold, check.turn];
  return (['clockwise', 'anticlockwise'] as const).every((way) => {
    return !hand(train, { hold, turn: watched, way, on: check.on }).turns;
  });
}

function turningOf(answer: HandAnswer, watched: string): Turning {
  if (!answer.turns) return 'locked';
  const speed: Quantity | undefined = answer.moves.get(watched);
  if (speed === undefined) return 'still';
  if (isSpan(speed)) return 'free';
  const sign = signOf(speed as Rational);
  if (sign === 0) return 'still';
  return sign > 0 ? 'clockwise' : 'anticlockwise';
}

// Likeliest first; what is said twice, or is right, falls out later.
function wrongTurns(right: Turning, mirrored: Turning, way: Way): (readonly [Wrong[0], Turning])[] {
  const turned = ['one-way turned round', mirrored] as const;
  const ahead = ['turning means holding', 'clockwise'] as const;
  const back = ['turning means holding', 'anticlockwise'] as const;
  switch (right) {
    case 'locked':
      return [turned, ahead, back, ['turning means holding', 'free']];
    case 'free':
      return [turned, ['always settled', 'clockwise'], ['always settled', 'anticlockwise'], LOCKED];
    case 'still':
      return [turned, ['nothing settles it', way], ['nothing settles it', 'free'], LOCKED];
    case 'clockwise':
    case 'anticlockwise': {
      const other = right === 'clockwise' ? 'anticlockwise' : 'clockwise';
      const idea = right === way ? 'mesh reverses' : 'sign dropped';
      return [turned, [idea, other], ['nothing settles it', 'free'], LOCKED];
    }
  }
}

const LOCKED = ['holding stops all', 'locked'] as const;

function withOneWaysTurned(train: Train): Train {
  const names = train.devices.flatMap(({ kind, name }) => (kind === 'one-way' ? [name] : []));
  return names.reduce((now, device) => {
    return applyFault(now, { what: 'one-way', device, is: 'backwards' });
  }, train);
}
