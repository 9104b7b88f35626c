export type { Group, Mark, Path, Scene, Standing, Subject, Words } from './scene.ts';
export { LOOKS } from './looks.ts';
export { placement, round, toSvg } from './svg.ts';
