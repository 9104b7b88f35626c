export { servoNow } from './applied.ts';
export * from './circuit.ts';
export {
  type BallEntry,
  type ByName,
  callsOf,
  circuitOf,
  type Controls,
  type ServoEntry,
  type SolenoidEntry,
  type ValveEntry,
} from './controls.ts';
export { type OilFault, withOilFault, withoutCurrent } from './fault.ts';
export { oilInRange, type OilInGear } from './gears.ts';
export { namedIn } from './named.ts';
export type { LineState } from './lines.ts';
export { restDoubt } from './proof.ts';
export { Settling } from './settle.ts';
