export type { EndNote, EndView } from './view.ts';
export { endView, placeWheels } from './endview.ts';
export { endScene, type EndShown } from './endscene.ts';
export { freeWay, hasRollers, type Jamming, jammingScene } from './jamming.ts';
export type { EndWheel } from './endwheel.ts';
