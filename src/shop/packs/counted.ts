import { compare, fraction, times } from '../../engine/linear/index.ts';
import type { Pack, PlateKind } from '../../engine/train/index.ts';
import { type Length, sumOf } from '../length/index.ts';
import { readLength } from '../limits/index.ts';

/** How many plates of each kind fewer there are than were told; below 0 for more. */
export type Fewer = Readonly<Record<'friction' | 'steel', number>>;

/**
 * By how much fewer plates make a pack's clearance larger, below 0 for smaller: from the thinnest of
 * their kind to the thickest. Undefined where the pack tells no plate of such a kind.
 */
export function gapByCount(
  { plates }: Pack,
  fewer: Fewer,
): { readonly least: Length; readonly most: Length } | undefined {
  const kinds = (['friction', 'steel'] as const).filter((kind) => fewer[kind] !== 0);
  const ends = kinds.map((kind) => endsOf(plates, kind));
  if (kinds.length === 0 || ends.some((its) => its === undefined)) return undefined;
  const changes = kinds.map((kind, i) => {
    const its = (ends[i] ?? []).map((one) => timesOf(one, fewer[kind]));
    return its.toSorted((a, b) => compare(a.um, b.um)) as [Length, Length];
  });
  return {
    least: sumOf(changes.map(([low]) => low)),
    most: sumOf(changes.map(([, high]) => high)),
  };
}

function endsOf(plates: Pack['plates'], kind: PlateKind): [Length, Length] | undefined {
  const sizes = plates.flatMap((its) => (its.kind === kind ? [readLength(its.thickness)] : []));
  const [first, ...others] = sizes.toSorted((a, b) => compare(a.um, b.um));
  return first && [first, others.at(-1) ?? first];
}

function timesOf(its: Length, count: number): Length {
  return { ...its, um: times(its.um, fraction(count)) };
}
