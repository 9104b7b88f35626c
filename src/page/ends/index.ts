export { Ends } from './ends.tsx';
