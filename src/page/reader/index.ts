export { Reader } from './reader.tsx';
export { recallReader } from './recalled.ts';
