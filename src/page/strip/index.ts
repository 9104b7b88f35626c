export { StripRoom } from './striproom.tsx';
export { lit } from './where.tsx';
