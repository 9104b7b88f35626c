export { about, accountsOf } from './accounts.ts';
export type { Answer } from './answer.ts';
export { Bench } from './bench.ts';
export type { Build } from './build.ts';
export { type ByEngine, type ByHand, type Setting, type Side, SIDES } from './setting.ts';
export { fetchReader } from './trainfile.ts';
