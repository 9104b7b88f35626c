export { type Answered, builtIn, builtTold, type Outcome } from './built.ts';
export { type BuildTask, buildTasks, subjectOf } from './tasks.ts';
