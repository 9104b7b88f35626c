export { about, accountsOf } from './accounts.ts';
export type { Build } from './build.ts';
export { SIDES } from './setting.ts';
export { Study } from './study.ts';
export { fetchReader, type Edits, type TrainFile } from './trainfile.ts';
