import type { FaultCell, FaultRow, MatrixGear } from '../../engine/faults/index.ts';

/** A cell that was touched. */
export interface Touched {
  readonly row: FaultRow;
  readonly gear: MatrixGear;
  readonly cell: FaultCell;
}
