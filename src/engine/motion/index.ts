export { type DeviceRows, type Motion, motionOf, willis, withDevices } from './motion.ts';
export { type GivenSpeed, pose, type Posed, type ConeQuestion, tieRows } from './question.ts';
export type { ConeRow, DeviceRow, GivenRow, MeshRow, SizeRow } from './row.ts';
