export type * from './answer.ts';
export { firstToSlip, type FirstToSlip } from './first.ts';
export { type Limit, type Strength, strengthNm } from './limit.ts';
export { type AskedGear, type Margins, marginsOf } from './margin.ts';
