export { FILE, SECTIONS, trainOf, VERSION } from './file.ts';
export { LIMIT } from './limit.ts';
