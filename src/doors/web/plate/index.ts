export { Plate } from './plate.tsx';
