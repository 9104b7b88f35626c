export { type Call, callOf } from './program.ts';
export { renamed } from './renamed.ts';
export { CHOICES, JOB_ACTIONS, type OptionName, OPTIONS, SHEETS, SHELLS, VERBS } from './verbs.ts';
