export type { EndNote, EndView } from './view.ts';
export { endView, placeWheels } from './endview.ts';
export { endScene } from './endscene.ts';
