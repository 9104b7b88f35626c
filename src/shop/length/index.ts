export {
  digitsIn,
  type Length,
  lengthFrom,
  type LengthUnit,
  less,
  meanOf,
  sumOf,
  UM_PER,
} from './length.ts';
export { type Gap, stackUp } from './stack.ts';
