export { Matrix } from './matrix.tsx';
