export { Diagram, layoutOf } from './diagram.tsx';
export { shownOf, standingsFor } from './shown.ts';
