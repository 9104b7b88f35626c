export { StripRoom } from './striproom.tsx';
