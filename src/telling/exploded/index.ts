export { type ExplodedShown, explodedScenes } from './exploded.ts';
