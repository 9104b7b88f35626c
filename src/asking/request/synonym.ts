import type { Way } from '../../engine/train/index.ts';
import { ourWord } from '../../engine/words/index.ts';

/**
 * A name as it is compared: small letters, a blank for the dot, and the trade's other words
 * for a part ("Front annulus" for front.ring, "low freewheel" for low one-way) made ours.
 */
export function plainName(name: string): string {
  const words = name
    .normalize('NFC')
    .trim()
    .toLowerCase()
    .split(/[\s.]+/);
  for (const count of [2, 1]) {
    const last = words.slice(-count).join(' ');
    const ours = ourWord(last);
    if (ours !== last) return [...words.slice(0, -count), ours].join(' ');
  }
  return words.join(' ');
}

/** Which way is meant, undefined for a word that is no way. */
export function wayMeant(text: string): Way | undefined {
  const word = text.toLowerCase().replace(/[\s-]/g, '');
  if (['clockwise', 'cw', 'horario'].includes(word)) return 'clockwise';
  const other = ['anticlockwise', 'counterclockwise', 'ccw', 'acw', 'antihorario'];
  return other.includes(word) ? 'anticlockwise' : undefined;
}
