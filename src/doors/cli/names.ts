import { nearest } from '../../engine/trainfile/index.ts';
import { type Arguments, visible } from '../../telling/narrative/index.ts';
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

/** What a refusal says of an unknown name: the nearest, else all that could stand there. */
export function suggestion(given: string, candidates: readonly string[]): Arguments {
  const near = nearest(given, candidates);
  return {
    given: visible(given),
    has: near === undefined ? 'no' : 'yes',
    near: visible(near ?? ''),
    all: visible(short(candidates)),
  };
}

function short(names: readonly string[]): string {
  const few = names.slice(0, MOST_TOLD);
  return few.join(', ') + (names.length > few.length ? ', …' : '');
}

const MOST_TOLD = 12;
