import type { FaultClass, FaultMatrix, FaultRow } from '../../engine/faults/index.ts';

/** Rows that fold together: of one device, or of everything that is no device. */
export interface Fold {
  /** The device; '' for splines, teeth and parts. */
  readonly device: string;
  readonly classes: readonly Folded[];
}

/** A row of the picture: faults that no road test parts, of which each shows the same cells. */
export interface Folded {
  readonly rows: readonly [FaultRow, ...FaultRow[]];
}

/**
 * The classes of a matrix that show something, by the device of the first fault of each, in the
 * order of the file; the faults that show nothing apart.
 */
export function foldsOf({ rows, classes }: FaultMatrix): {
  readonly folds: readonly Fold[];
  readonly silent: readonly FaultRow[];
} {
  const by = new Map<string, Folded[]>();
  for (const among of classes.filter(({ silent }) => !silent)) {
    const its = rowsOf(among, rows);
    const [fault] = its[0].faults;
    const device = fault && 'device' in fault ? fault.device : '';
    const known = by.get(device);
    if (known) known.push({ rows: its });
    else by.set(device, [{ rows: its }]);
  }
  const all = [...by].map(([device, its]) => ({ device, classes: its }));
  const folds = [
    ...all.filter(({ device }) => device !== ''),
    ...all.filter((one) => one.device === ''),
  ];
  const silent = classes.filter((one) => one.silent).flatMap((one) => rowsOf(one, rows));
  return { folds, silent };
}

function rowsOf(among: FaultClass, rows: readonly FaultRow[]): [FaultRow, ...FaultRow[]] {
  return among.rows.map((place) => rows[place] as FaultRow) as [FaultRow, ...FaultRow[]];
}
