export { type Motion, motionOf, willis, withDevices } from './motion.ts';
export { type Given, pose, type Posed, type Question, tiesOf } from './question.ts';
export type { DeviceRows } from './motion.ts';
