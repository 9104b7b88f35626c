export {
  type Answered,
  askFeel,
  askHalfBuilt,
  type BuildTask,
  builtIn,
  builtTold,
  buildTasks,
  type Outcome,
  takenOffTold,
} from './building.ts';
export { askBands } from './bands.ts';
export { askEndPlays } from './endplays.ts';
export type { MeasuredAnswer, MeasureRequest } from './kind.ts';
export { askMeasurements, type Judgements, type Measurements } from './measurements.ts';
export { openIn, unreadIn } from './open.ts';
export { askPacks } from './packs.ts';
export { askPlan } from './plan.ts';
export { askPreloads } from './preloads.ts';
export { askStanding, type MeasuredThing, type MeasuredStanding } from './standing.ts';
export type { TrialsRequest } from './trials.ts';
export { askWear } from './wear.ts';
