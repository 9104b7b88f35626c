export { sharedReactions } from './circuits.ts';
export { reactionsOf } from './loads.ts';
export { type Port, portsOf, portTorque } from './port.ts';
export * from './quantity.ts';
export { speedsOf, value } from './speeds.ts';
export { canPush, judge, type Loads, loadsOf, speedAt, type Verdict } from './verdict.ts';
