export { Gears } from './gears.tsx';
export { Turner } from './turner.tsx';
