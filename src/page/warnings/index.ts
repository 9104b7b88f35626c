export { Warnings } from './list.tsx';
export { markWarned } from './marked.ts';
export { type Warned, warningsOf } from './warnings.ts';
