import type { Pack, Part, PlateKind } from '../../engine/train/index.ts';
import type { Model } from './model.ts';
import type { Turned } from './solid.ts';

/** More plates than these are not drawn; the list of parts has their number. */
const MOST_PLATES = 24;
const PITCH = 7;

/**
 * The plates of a part from the left: as the pack's own list has them where it is the part's, else
 * frictions and steels by turns, as many as were counted.
 */
export function platesOf(part: Part, packs: readonly Pack[]): PlateKind[] {
  const own = packs.filter(({ device }) => part.carries.includes(device));
  const listed = own.flatMap(({ plates }) => plates.map(({ kind }) => kind)).toReversed();
  const { frictions, steels } = part;
  if (listed.length > 0 && agrees(listed, frictions, steels)) return listed.slice(0, MOST_PLATES);
  const counted: PlateKind[] = [];
  let [lined, bare] = [frictions ?? 0, steels ?? 0];
  while (lined + bare > 0 && counted.length < MOST_PLATES) {
    const next = bare > 0 && (lined === 0 || counted.at(-1) !== 'steel') ? 'steel' : 'friction';
    counted.push(next);
    if (next === 'steel') bare -= 1;
    else lined -= 1;
  }
  return counted;
}

function agrees(listed: readonly PlateKind[], frictions?: number, steels?: number): boolean {
  const of = (kind: PlateKind) => listed.filter((one) => one === kind).length;
  const lined = frictions === undefined || of('friction') === frictions;
  // A backing plate is counted with the steels by some, and a cushion plate by others.
  const bare = of('steel') + of('cushion') + of('backing plate');
  return lined && (steels === undefined || (of('steel') <= steels && steels <= bare));
}

/** Plates one behind the other, the last in `x` and the others to the left of it; where they end. */
export function stackPlates(
  model: Model,
  x: number,
  kinds: readonly PlateKind[],
  outer: number,
  shaft?: number,
): number {
  let at = x;
  for (const kind of kinds.toReversed()) {
    at -= PITCH + thickness(kind);
    model.turn(at, plate(kind, outer));
    if (shaft !== undefined) model.turn(at - PITCH, { outer: shaft, long: PITCH });
  }
  return at;
}

function thickness(kind: PlateKind): number {
  return kind === 'backing plate' ? 6 : kind === 'friction' ? 2.6 : 2;
}

function plate(kind: PlateKind, outer: number): Turned {
  const long = thickness(kind);
  switch (kind) {
    case 'friction':
      return {
        outer: outer - 7,
        inner: outer - 22,
        long,
        bored: { count: 28, high: 3.5 },
        face: 'solid-lined',
      };
    case 'steel':
    case 'backing plate':
      return { outer, inner: outer - 20, long, teeth: { count: 14, high: 5 } };
    case 'cushion':
      return { outer: outer - 5, inner: outer - 18, long };
  }
}
