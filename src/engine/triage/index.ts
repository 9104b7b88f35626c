export type { Counsel } from './advise.ts';
export type { Bar, StoppedTest, Stopped } from './bar.ts';
export { diagnose, type Diagnosis } from './diagnosis.ts';
export { inTradeOrder } from './order.ts';
export { isOfParts, type TestPlace, placeOf } from './place.ts';
export { type Triage, triageOf } from './triage.ts';
