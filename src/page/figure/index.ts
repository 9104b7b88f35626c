export { captions, faultsText } from './caption.ts';
export { Drawing } from './drawing.tsx';
export { fillWith, large } from './large.ts';
export { Figure } from './figure.tsx';
export { pngOf } from './png.ts';
export { SpeedTable } from './speedtable.tsx';
export { speedText } from './speedtext.ts';
