import type { Question } from './question.ts';

/**
 * A question as it is put to a class: asked, voted on, revealed, and, if the class talks it
 * over, voted on again. Plain data; each step makes another round.
 */
export interface Round {
  readonly question: Question;
  readonly stage: 'asked' | 'voting' | 'revealed';
  /** Votes by choice, one number a choice. */
  readonly votes: readonly number[];
  /** The votes of the time before, where the class votes again. */
  readonly before?: readonly number[];
}

export function roundOf(question: Question): Round {
  return { question, stage: 'asked', votes: question.choices.map(() => 0) };
}

/** One vote more for a choice. Nothing changes once revealed, or for a choice that is not there. */
export function vote(round: Round, choice: number): Round {
  return counted(round, choice, 1);
}

/** One vote less: a hand counted twice. No choice falls below none. */
export function unvote(round: Round, choice: number): Round {
  return counted(round, choice, -1);
}

export function reveal(round: Round): Round {
  return { ...round, stage: 'revealed' };
}

/** Votes start from none; what was voted stays to be compared. What was revealed is hidden again. */
export function again(round: Round): Round {
  if (round.votes.every((count) => count === 0)) {
    return round.stage === 'revealed' ? roundOf(round.question) : round;
  }
  return { ...roundOf(round.question), before: round.votes };
}

/** What the class said. A share is of all votes, from 0 to 1; 0 where nobody voted. */
export interface Tally {
  readonly total: number;
  readonly right: number;
  readonly choices: readonly TallyRow[];
}

export interface TallyRow {
  readonly votes: number;
  readonly share: number;
  /** Votes gained or lost since the time before, where the class votes again. */
  readonly change?: number;
}

/** How a round stands: the votes of each choice, and which is right once it is revealed. */
export function tally({ question, votes, before }: Round): Tally {
  const total = votes.reduce((sum, count) => sum + count, 0);
  const right = votes[question.choices.findIndex((choice) => choice.right)] ?? 0;
  const choices = votes.map((count, k): TallyRow => {
    const row = { votes: count, share: total === 0 ? 0 : count / total };
    return before ? { ...row, change: count - (before[k] ?? 0) } : row;
  });
  return { total, right, choices };
}

function counted(round: Round, choice: number, by: 1 | -1): Round {
  const count = round.votes[choice];
  if (round.stage === 'revealed' || count === undefined || count + by < 0) return round;
  const votes = round.votes.map((other, k) => (k === choice ? other + by : other));
  return { ...round, stage: 'voting', votes };
}
