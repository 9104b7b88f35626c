export { Applied } from './applied.tsx';
export { Gears } from './gears.tsx';
export { SideOf } from './side.tsx';
export { Turner } from './turner.tsx';
