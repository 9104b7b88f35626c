export { Base } from './base.ts';
export { floatExtremes } from './float.ts';
export { Unsure } from './floatrows.ts';
export { FloatTable } from './floattable.ts';
export { add, type Int, lcm, multiply, negate } from './integer.ts';
export * from './programme.ts';
export * from './rational.ts';
export { type Bound, type Extremes, extremes, freedom, solve } from './simplex.ts';
export type { Reduced } from './base.ts';
