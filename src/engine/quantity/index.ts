export { quantityFrom, toldIn } from './quantity.ts';
export { type Dimension, formOf } from './unit.ts';
