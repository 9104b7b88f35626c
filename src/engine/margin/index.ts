export type * from './answer.ts';
export { type Limit, type Strength, strengthNm } from './limit.ts';
export { type AskedGear, type Margins, marginsOf } from './margin.ts';
