import type { Concept } from './concept.ts';
import { DEVICES } from './devices.ts';
import { MOTION } from './motion.ts';
import { PARTS } from './parts.ts';
import { SHOP } from './shop.ts';

/** Every concept that has a word of its own, by a name that nobody but us reads. */
export const GLOSSARY: Readonly<Record<string, Concept>> = {
  ...PARTS,
  ...DEVICES,
  ...MOTION,
  ...SHOP,
};

/** The word of files for another word of the trade; a word that has none is its own. */
export function ourWord(word: string): string {
  return READ.get(word) ?? word;
}

/** What a word is called now that had another name here before; undefined for every other. */
export function newWord(word: string): string | undefined {
  return ONCE.get(word);
}

const READ = wordsOf(({ read }) => read);
const ONCE = wordsOf(({ once }) => once);

function wordsOf(others: (concept: Concept) => readonly string[] | undefined) {
  return new Map(
    Object.values(GLOSSARY).flatMap((concept) =>
      (others(concept) ?? []).map((word) => [word, concept.file ?? concept.en] as const),
    ),
  );
}
