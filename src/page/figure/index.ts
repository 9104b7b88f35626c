export { captions, faultsText } from './caption.ts';
export { Drawing } from './drawing.tsx';
export { Figure } from './figure.tsx';
