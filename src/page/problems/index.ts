export { Problems } from './problems.tsx';
