export { Plate } from './plate.tsx';
export { shownOf, standingsFor } from './shown.ts';
