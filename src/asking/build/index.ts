export { askBands } from './bands.ts';
export { askEndPlays } from './endplays.ts';
export type { Measured, MeasureRequest } from './kind.ts';
export { askMeasurements, type Measurements } from './measurements.ts';
export { askPacks } from './packs.ts';
export { askPlan } from './plan.ts';
export { askPreloads } from './preloads.ts';
export type { TrialsRequest } from './trials.ts';
export { askWear } from './wear.ts';
