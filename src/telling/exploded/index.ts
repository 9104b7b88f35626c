export { type ExplodedShown, explodedScenes, type PartState } from './exploded.ts';
