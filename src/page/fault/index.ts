export { Builds } from './builds.tsx';
