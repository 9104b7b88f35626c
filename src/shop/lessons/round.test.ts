import { describe, expect, it } from 'vitest';
import type { Question } from './question.ts';
import { again, reveal, type Round, roundOf, tally, unvote, vote } from './round.ts';

const question: Question = {
  kind: 'engine braking',
  subject: [],
  setting: { on: [], end: 'coast', hold: [] },
  choices: [
    { answer: { answer: 'yes or no', yes: true }, right: false, misconception: 'braking always' },
    { answer: { answer: 'yes or no', yes: false }, right: true },
  ],
  facts: [],
};
const voted = (...choices: number[]) => choices.reduce<Round>(vote, roundOf(question));

describe('a round', () => {
  it('is asked, voted on and revealed', () => {
    expect(roundOf(question)).toEqual({ question, stage: 'asked', votes: [0, 0] });
    expect(voted(0, 1, 0)).toEqual({ question, stage: 'voting', votes: [2, 1] });
    expect(reveal(voted(0)).stage).toBe('revealed');
    expect(reveal(roundOf(question)).stage).toBe('revealed');
  });

  it('takes a vote back, but never one that is not there', () => {
    expect(unvote(voted(0, 0), 0).votes).toEqual([1, 0]);
    const none = roundOf(question);
    expect(unvote(none, 1)).toBe(none);
    expect(vote(none, 2)).toBe(none);
    expect(vote(none, -1)).toBe(none);
  });

  it('counts nothing once it is revealed', () => {
    const shown = reveal(voted(1));
    expect(vote(shown, 0)).toBe(shown);
    expect(unvote(shown, 1)).toBe(shown);
  });

  it('is voted on again, and the votes of the time before are compared', () => {
    const second = [1, 1].reduce<Round>(vote, again(voted(0, 1)));
    expect(second.before).toEqual([1, 1]);
    expect(tally(second)).toEqual({
      total: 2,
      right: 2,
      choices: [
        { votes: 0, share: 0, change: -1 },
        { votes: 2, share: 1, change: 1 },
      ],
    });
    const nobody = roundOf(question);
    expect(again(nobody)).toBe(nobody);
    // Who looked at the answer beforehand asks the class all the same.
    expect(again(reveal(nobody))).toEqual(nobody);
  });

  it('tells shares of nothing as nothing', () => {
    expect(tally(roundOf(question)).choices.map(({ share }) => share)).toEqual([0, 0]);
  });

  it('is plain data', () => {
    const round = again(voted(0, 1));
    expect(JSON.parse(JSON.stringify(round))).toEqual(round);
  });
});
