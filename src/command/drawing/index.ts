export { endSceneOf } from './drawend.ts';
export { explodedSceneOf } from './drawexploded.ts';
export { leverSceneOf } from './drawlever.ts';
