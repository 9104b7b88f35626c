export { Chance } from './chance.ts';
export { type Draws, type DrawsAsked, drawStacks } from './draws.ts';
export {
  digitsIn,
  asWritten,
  digitsOf,
  type Length,
  lengthFrom,
  type LengthUnit,
  less,
  meanOf,
  sumOf,
  UM_PER,
  UM_PER_WRITTEN,
  type WrittenUnit,
} from './length.ts';
export { type Gap, type StackTerm, stackUp } from './stack.ts';
export type { Quantile } from './draws.ts';
export type { Share } from './draws.ts';
