export { TorqueBalance } from './balance.ts';
export { sharedLoads, sharedReactions } from './circuits.ts';
export { type Observed, observe } from './observed.ts';
export { portsOf } from './port.ts';
export * from './quantity.ts';
export { speedsOf, value } from './speeds.ts';
export { torquesOf } from './statics.ts';
export { provedTorques, scaled, type Torques } from './torques.ts';
export { judge, pushersOf, rowOf, speedAt, type Ruling } from './ruling.ts';
