export { Measure } from './measure.tsx';
