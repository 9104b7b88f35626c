export { About, Begin } from './begin.tsx';
