import {
  type LinearForm,
  fraction,
  minus,
  over,
  type Rational,
  times,
  toText,
} from '../linear/index.ts';
import type { Motion } from '../motion/index.ts';
import { outputsOf } from '../train/index.ts';

/**
 * How the ends of a train and the two sides of each device can move together, as a text: two
 * trains of one text get the same state and ratio whatever is applied.
 */
// The forms of the ends and of the slips, in the free coordinates, are the columns of a matrix
// whose rows span all that they can do at once. Its reduced echelon form is one for each span.
export function reachOf({ base, devices, speedOf, train }: Motion): string {
  const forms: LinearForm[] = [train.input, ...outputsOf(train)].map(speedOf);
  forms.push(...devices.map(({ slip }) => slip));
  const reduced = forms.map((form) => base.reduce(form));
  let rows = base.free.map((_, j) => {
    return reduced.map(({ coef, times: scale }) => fraction(coef[j] ?? 0, scale));
  });
  const echelon: (readonly Rational[])[] = [];
  forms.forEach((_, column) => {
    const lead = rows.find((row) => row[column]?.num !== 0);
    if (!lead) return;
    const unit = lead.map((cell) => over(cell, lead[column] as Rational));
    const clear = (row: readonly Rational[]) => without(row, unit, row[column] as Rational);
    rows = rows.filter((row) => row !== lead).map(clear);
    echelon.splice(0, echelon.length, ...echelon.map(clear), unit);
  });
  return echelon.map((row) => row.map(toText).join(' ')).join('\n');
}

function without(row: readonly Rational[], unit: readonly Rational[], factor: Rational) {
  if (factor.num === 0) return [...row];
  return row.map((cell, k) => minus(cell, times(factor, unit[k] as Rational)));
}
