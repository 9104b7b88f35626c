export { type Misconception, MISCONCEPTIONS } from './misconception.ts';
export type { Answer, Choice, FirstSign, Question, Setting, Subject } from './question.ts';
export { type Kind, KINDS } from './question.ts';
export { type QuestionOptions, questionsInTurn, questionsOf } from './questions.ts';
export { again, reveal, type Round, roundOf, tally, type Tally, unvote, vote } from './round.ts';
export type { TallyRow } from './round.ts';
