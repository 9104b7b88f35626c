export * from './answer.ts';
export type * from './fact.ts';
