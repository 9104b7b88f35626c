export { Scale } from './scale.tsx';
