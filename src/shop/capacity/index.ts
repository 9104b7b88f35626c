export * from './band.ts';
export { gripsOf, limitsOf } from './held.ts';
export { oilHeadN } from './oilhead.ts';
export * from './plate.ts';
export * from './rise.ts';
