export { Diagram } from './diagram.tsx';
export { shownOf, standingsFor } from './shown.ts';
