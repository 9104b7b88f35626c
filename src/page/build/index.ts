export { BuildRoom } from './buildroom.tsx';
