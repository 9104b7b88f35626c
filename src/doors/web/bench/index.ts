export { about, accountsOf } from './accounts.ts';
export { Bench } from './bench.ts';
export type { Build } from './build.ts';
export { SIDES } from './setting.ts';
export { fetchReader, type Steps } from './trainfile.ts';
