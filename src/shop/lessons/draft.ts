import { type Rational, toNumber } from '../../engine/linear/index.ts';
import { shuffled } from './chance.ts';
import type { Misconception } from './misconception.ts';
import type { Answer, Choice, Question } from './question.ts';

/** A question before its choices are put in order; the likeliest wrong ideas first. */
export interface Draft extends Pick<Question, 'kind' | 'subject' | 'setting' | 'facts'> {
  readonly right: Answer;
  readonly wrong: readonly Wrong[];
}

export type Wrong = readonly [misconception: Misconception, answer: Answer];

const MOST_CHOICES = 5;

/** A wrong idea that happens to be right here is left out; undefined where no other is left. */
export function questionFrom(draft: Draft, seed: number): Question | undefined {
  const { right, wrong, kind, subject, setting, facts } = draft;
  const seen = new Set([valueOf(right)]);
  const choices: Choice[] = [{ answer: right, right: true }];
  for (const [misconception, answer] of wrong) {
    if (choices.length === MOST_CHOICES || seen.has(valueOf(answer))) continue;
    seen.add(valueOf(answer));
    choices.push({ answer, right: false, misconception });
  }
  if (choices.length === 1) return undefined;
  const text = JSON.stringify([kind, subject, setting]);
  return { kind, subject, setting, choices: shuffled(choices, seed, text), facts };
}

/** Two answers with one value say the same, as a reader sees them rounded. */
export function valueOf(answer: Answer): string {
  switch (answer.answer) {
    case 'turning':
      return answer.is;
    case 'ratio':
      return rounded(answer.ratio);
    case 'device':
      return answer.does;
    case 'devices':
      return JSON.stringify(answer.devices.toSorted());
    case 'members':
      return JSON.stringify(answer.members.toSorted());
    case 'yes or no':
      return String(answer.yes);
    case 'torque':
      return `${answer.pushed ?? ''} ${rounded(answer.size)}`;
    case 'state':
      return `${answer.state} ${answer.ratio ? rounded(answer.ratio) : ''}`;
    case 'part':
      return answer.part;
    case 'facing':
      return answer.to;
    case 'sign': {
      const { sign } = answer;
      if (!sign) return 'none';
      const { gear, end, state, ratio } = sign;
      return JSON.stringify([gear.range, gear.gear, end, state, ratio ? rounded(ratio) : '']);
    }
  }
}

// Three decimals, or four figures below 1: no class tells more from a board.
function rounded(value: Rational): string {
  const number = toNumber(value);
  return Math.abs(number) < 1 ? String(Number(number.toPrecision(4))) : number.toFixed(3);
}
