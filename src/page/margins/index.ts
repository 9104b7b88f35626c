export { Margins } from './margins.tsx';
