export { check } from './check.ts';
export type { Misgiving, Warning } from './warning.ts';
