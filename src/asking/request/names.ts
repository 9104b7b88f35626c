import { nearest } from '../../engine/yaml/index.ts';
import type { Unknown } from './refused.ts';
import { plainName } from './synonym.ts';

/**
 * The candidate that a person means: itself, or the only one that is the same but for case,
 * blanks for the dot, and the trade's other words for a part.
 */
export function meant(given: string, candidates: readonly string[]): string | undefined {
  const name = given.trim();
  if (candidates.includes(name)) return name;
  const same = candidates.filter((candidate) => plainName(candidate) === plainName(name));
  return same.length === 1 ? same[0] : undefined;
}

/** Names with commas between; a name with a comma in it must stand alone. */
export function split(text: string, candidates: readonly string[]): string[] {
  if (text.trim() === '') return [];
  return meant(text, candidates) === undefined
    ? text.split(',').map((name) => name.trim())
    : [text];
}

/** What is told of an unknown name. */
export function unknown(given: string, known: readonly string[]): Unknown {
  const near = nearest(given, known);
  return { given, ...(near !== undefined && { near }), known };
}
