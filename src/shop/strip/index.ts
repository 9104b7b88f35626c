export { type PartFinding, findingsOf } from './findings.ts';
export { kindOfPart } from './kind.ts';
export { heldOnBy, keptOffBy, nextOff, nextOn, type Stripping } from './stripping.ts';
