export { typedOf } from './kept.ts';
export { Measure } from './measure.tsx';
export { measuringOf } from './measuring.ts';
