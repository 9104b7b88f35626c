export { Base } from './base.ts';
export { type Range, range } from './face.ts';
export { type Int } from './integer.ts';
export * from './programme.ts';
export * from './rational.ts';
export { solve } from './simplex.ts';
