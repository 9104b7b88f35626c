export { Describe } from './describe.tsx';
