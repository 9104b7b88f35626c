export type * from './answer.ts';
export { applyFault } from './apply.ts';
export { everyFault, everyParting, faultText } from './every.ts';
export type * from './fault.ts';
export { faultNamed, type NamedFault } from './name.ts';
export { faultMatrix, type MatrixOptions } from './matrix.ts';
export { Variants } from './variants.ts';
export { Bench, type BenchSign, type RoadSign, roadSign, type Sign } from './sign.ts';
export { type Fast, fastest } from './spin.ts';
