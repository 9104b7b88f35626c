export { Warnings } from './list.tsx';
export { markWarned } from './marked.ts';
export { warningsOf } from './warnings.ts';
