export { check } from './check.ts';
export type { Mend } from './mend.ts';
export type { Misgiving, Warning } from './warning.ts';
