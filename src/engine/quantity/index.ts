export { quantityFrom } from './quantity.ts';
export { type Dimension, formOf } from './unit.ts';
