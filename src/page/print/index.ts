export { PrintRoom } from './printroom.tsx';
