export { type PartFinding, faultFrom, findingsOf, isFault, NOTHING_WRONG } from './findings.ts';
export { kindOfPart } from './kind.ts';
export { heldOnBy, keptOffBy, nextOff, nextOn, type Stripping } from './stripping.ts';
export { isLostWith, isReadWhole } from './lost.ts';
