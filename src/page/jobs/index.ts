export { JobRoom } from './jobroom.tsx';
