export { FoundFaulty, GoesOn } from './moves.tsx';
export type { Again } from './progress.ts';
export { StripRoom } from './striproom.tsx';
export { lit } from './where.tsx';
