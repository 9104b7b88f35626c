export { Measure } from './measure.tsx';
export { typedOf } from './kept.ts';
