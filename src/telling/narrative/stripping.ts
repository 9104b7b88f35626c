import { heldOnBy, keptOffBy, type PartFinding, type Stripping } from '../../shop/strip/index.ts';
import type { Part } from '../../engine/train/index.ts';
import { keyOf, visible, type Voice } from '../voice/index.ts';

/** What a part was found to be, as it is offered and as a job keeps it: "Teeth chipped or pitted". */
export function findingText(is: PartFinding, voice: Voice): string {
  return voice.say('strip.finding', { is: keyOf(is) });
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
