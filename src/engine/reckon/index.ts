export { canPush, type Port, portsOf, portTorque, type Reactions, reactionsOf } from './loads.ts';
export * from './quantity.ts';
export { speedsOf, value } from './speeds.ts';
export { judge, type Loads, loadsOf, speedAt, type Verdict } from './verdict.ts';
