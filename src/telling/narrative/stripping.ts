import { compare, signOf } from '../../engine/linear/index.ts';
import type { Pack, Part } from '../../engine/train/index.ts';
import { sizeOf } from '../../shop/limits/index.ts';
import { gapByCount } from '../../shop/packs/index.ts';
import { heldOnBy, keptOffBy, type PartFinding, type Stripping } from '../../shop/strip/index.ts';
import { lengthText } from './packs.ts';
import { keyOf, visible, type Voice } from '../voice/index.ts';

/** What a part was found to be, as it is offered and as a job keeps it: "Teeth chipped or pitted". */
export function findingText(is: PartFinding, voice: Voice): string {
  return voice.say('strip.finding', { is: keyOf(is) });
}

/** Plates as they were counted, where the file says otherwise; and what becomes of the stack. */
export function countedText(
  { frictions: fileFrictions = 0, steels: fileSteels = 0 }: Part,
  { frictions, steels }: { readonly frictions: number; readonly steels: number },
  pack: Pack | undefined,
  voice: Voice,
): string {
  const fewer = { friction: fileFrictions - frictions, steel: fileSteels - steels };
  const gap = pack && gapByCount(pack, fewer);
  const sign = gap ? signOf(gap.least.um) + signOf(gap.most.um) : 0;
  const ends = [gap?.least, gap?.most].flatMap((its) =>
    its ? [{ ...its, um: sizeOf(its.um) }] : [],
  );
  const texts = ends
    .toSorted((a, b) => compare(a.um, b.um))
    .map((its) => lengthText(its, voice, 'mm'));
  return voice.say('strip.counted', {
    frictions,
    steels,
    fileFrictions,
    fileSteels,
    follows: sign > 1 ? 'larger' : sign < -1 ? 'smaller' : 'unknown',
    by: [...new Set(texts)].join(' – '),
  });
}

/** Why a part may not come off, or not go on yet; undefined where it may. */
export function strippingRefusal(
  stripping: Stripping,
  part: Part,
  voice: Voice,
): string | undefined {
  const over = heldOnBy(stripping, part);
  const under = keptOffBy(stripping, part);
  const told = (names: readonly string[]) => {
    return { count: names.length, parts: voice.list(names.map(visible)) };
  };
  if (over.length > 0) return voice.say('strip.held on', told(over));
  return under.length > 0 ? voice.say('strip.kept off', told(under)) : undefined;
}
