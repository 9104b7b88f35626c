export { Lever } from './lever.tsx';
