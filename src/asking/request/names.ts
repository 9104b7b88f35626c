import type { Train } from '../../engine/train/index.ts';
import { otherNames } from '../../engine/words/index.ts';
import { nearest } from '../../engine/yaml/index.ts';
import type { Unknown } from './refused.ts';
import { plainName } from './synonym.ts';

/**
 * The candidate that a person means: itself, or the only one that is the same but for case,
 * blanks for the dot, and the trade's other words for a part; else the only one that a train of
 * which names are asked calls so in another language.
 */
export function meant(
  given: string,
  candidates: readonly string[],
  train: Pick<Train, 'languages'> = {},
): string | undefined {
  const name = given.trim();
  if (candidates.includes(name)) return name;
  const wanted = plainName(name);
  const same = candidates.filter((candidate) => plainName(candidate) === wanted);
  if (same.length > 0) return same.length === 1 ? same[0] : undefined;
  const told = candidates.filter((candidate) => {
    return otherNames(train, candidate).some((other) => plainName(other) === wanted);
  });
  return told.length === 1 ? told[0] : undefined;
}

/** Names with commas between; a name with a comma in it must stand alone. */
export function split(
  text: string,
  candidates: readonly string[],
  train?: Pick<Train, 'languages'>,
): string[] {
  if (text.trim() === '') return [];
  return meant(text, candidates, train) === undefined
    ? text.split(',').map((name) => name.trim())
    : [text];
}

/** What is told of an unknown name. */
export function unknown(given: string, known: readonly string[]): Unknown {
  const near = nearest(given, known);
  return { given, ...(near !== undefined && { near }), known };
}
