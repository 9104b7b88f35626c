import type { Base } from './base.ts';
import { Unsure } from './floatrows.ts';
import { FloatTable } from './floattable.ts';
import type { LinearForm, Row } from './programme.ts';

/** Least and greatest of a form in float64; infinite for no limit. */
export interface FloatExtremes {
  readonly least: number;
  readonly greatest: number;
}

/**
 * What `extremes` finds, in float64: undefined where the rows cannot all hold. Throws Unsure
 * where rounding leaves an answer open.
 */
export function floatExtremes(
  columns: number,
  rows: readonly Row[],
  forms: readonly LinearForm[],
  base: Base,
): FloatExtremes[] | undefined {
  const own = rows.slice(base.rows.length);
  const width = base.free.length + columns - base.columns;
  const table = new FloatTable(own.length + forms.length, width);
  table.reset(width);
  own.forEach((row, r) => {
    table.addForm(row, base, row.sense === '=' ? -1 : r);
    if (row.right !== 0) table.shift(r, -Number(row.right));
  });
  for (const form of forms) table.addForm(form, base, -1);
  for (const [r, row] of own.entries()) {
    if (row.sense === '=' && !table.settleEquality(r) && table.sign(r, 0) !== 0) return undefined;
  }
  table.settleVariables();
  if (table.crissCross(-1, 1) === 'stuck') return undefined;
  return forms.map((_, k) => {
    const aim = own.length + k;
    const [least, greatest] = ([1, -1] as const).map((sign) => {
      const end = table.crissCross(aim, sign);
      if (end === 'stuck') throw new Unsure();
      return end === 'endless' ? -sign * Infinity : table.value(aim);
    }) as [number, number];
    return { least, greatest };
  });
}
