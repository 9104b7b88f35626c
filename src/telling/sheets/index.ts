export { chartSheet } from './chart.ts';
export {
  type Block,
  type Cell,
  type Column,
  type Paper,
  PAPERS,
  type Printing,
  type Sheet,
  type Stamp,
} from './document.ts';
export { typstOf } from './typst.ts';
