export { Why } from './why.tsx';
