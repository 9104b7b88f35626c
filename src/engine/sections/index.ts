export { deviceValue } from './devices.ts';
export { FILE, SECTIONS, trainOf, VERSION } from './file.ts';
export { pairValue } from './pairs.ts';
export { partValue } from './teardown.ts';
export { setValue } from './sets.ts';
