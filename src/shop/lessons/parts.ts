import { facingOf, type Part, type Train, upOf } from '../../engine/train/index.ts';
import { heldOnBy, nextOff } from '../strip/index.ts';
import { shuffled } from './chance.ts';
import type { Draft, Wrong } from './draft.ts';
import type { Answer } from './question.ts';

/** Of each kind; enough for a lesson. */
const MOST = 3;

/**
 * Which of these parts may come off now? The right one is the next of the teardown; the wrong ones
 * still have something over them. Asked at a few places of the teardown.
 */
export function comesOffQuestions(train: Train, seed: number): Draft[] {
  const { teardown = [] } = train;
  const up = upOf(teardown);
  const is = ({ name }: Part): Answer => ({ answer: 'part', part: name });
  const drafts = teardown.flatMap((part, i): Draft[] => {
    const off = teardown.slice(0, i).map(({ name }) => name);
    const stripping = { teardown, off: new Set(off) };
    if (i === 0 || nextOff(stripping) !== part) return [];
    const covered = teardown.filter((its) => heldOnBy(stripping, its).length > 0);
    const under = covered.filter((its) => heldOnBy(stripping, its).includes(part.name));
    const far = covered.findLast((its) => up(its) === up(part));
    const wrong: Wrong[] = [
      ...under.slice(0, 2).map((its): Wrong => ['cover unseen', is(its)]),
      ...(far ? [['far end first', is(far)] as const] : []),
      ...covered.slice(0, 2).map((its): Wrong => ['cover unseen', is(its)]),
    ];
    const setting = { on: [], end: 'hand', hold: [], off } as const;
    const subject = [{ kind: 'part', name: part.name }] as const;
    return [{ kind: 'comes off', subject, setting, right: is(part), wrong, facts: [] }];
  });
  return shuffled(drafts, seed, 'comes off').slice(0, MOST);
}

/** To which end does the face of a part look that its file names? */
export function facesQuestions(train: Train, seed: number): Draft[] {
  const { teardown = [] } = train;
  const up = upOf(teardown);
  const drafts = teardown.flatMap((part): Draft[] => {
    const end = facingOf(part, up(part))?.end;
    if (part.face === undefined || end === undefined) return [];
    const is = (to: 'input' | 'output' | 'either'): Answer => ({ answer: 'facing', to });
    const wrong: Wrong[] = [
      ['wrong way round', is(end === 'input' ? 'output' : 'input')],
      ['any way round', is('either')],
    ];
    const setting = { on: [], end: 'hand', hold: [], face: part.face } as const;
    const subject = [{ kind: 'part', name: part.name }] as const;
    return [{ kind: 'faces', subject, setting, right: is(end), wrong, facts: [] }];
  });
  return shuffled(drafts, seed, 'faces').slice(0, MOST);
}
