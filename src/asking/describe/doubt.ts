import { toNumber } from '../../engine/linear/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';
import type { Reply } from './asking.ts';

/**
 * What such a number hardly ever is: more than this, in mm or a count. Common practice, with no
 * source: it asks a person to look again, and forbids nothing.
 */
const HARDLY_OVER: readonly (readonly [RegExp, number])[] = [
  [/\bclearance\.(?:least|most)$/u, 10],
  [/\beach friction\.(?:least|most)$/u, 2],
  [/\bplates\.(?:friction|steel|cushion)$/u, 12],
  [/\bplates\.backing plate$/u, 25],
  [/\bplates\.(?:frictions|steels)$/u, 16],
  [/^(?:endplay|preload)\..*(?:least|most)$/u, 10],
  [/\b(?:fitted|sizes)$/u, 40],
  [/^(?:planets|pairs|inner planets|bevels)$/u, 8],
  [/^(?:sun|ring|planet|first step|second step|left|right)$/u, 250],
];

/** Whether an answer is so unusual that it is asked once more; what it hardly ever is over. */
export function doubtOf(key: string, said: Reply): number | undefined {
  const most = HARDLY_OVER.find(([form]) => form.test(key))?.[1];
  if (most === undefined) return undefined;
  const all = [said].flat().map((one) => {
    if (typeof one === 'number') return one;
    const read = typeof one === 'string' ? quantityFrom(one, 'length') : undefined;
    return read ? toNumber(read.size) / 1000 : 0;
  });
  return all.some((one) => one > most) ? most : undefined;
}
