export * from './circuit.ts';
export { type Application, servoNow, type ServoNow } from './applied.ts';
export type { LineNow, LineState } from './lines.ts';
export { proveRest, restDoubt } from './proof.ts';
export { type Ends, linesOf, type Move, type Rest, Settling, type Settled } from './settle.ts';
export type { By, WayNow } from './ways.ts';
