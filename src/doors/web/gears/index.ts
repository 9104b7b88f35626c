export { Gears } from './gears.tsx';
