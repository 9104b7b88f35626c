import { namesOf, type Train } from '../train/index.ts';
import { otherNames } from './naming.ts';

/**
 * A text in which things of a train may go by their names in another language, with the file's own
 * names in their place: "freno de segunda: con aire" as "second brake: con aire". Case does not count.
 */
export function inFileNames(text: string, train: Train): string {
  if (!train.languages) return text;
  const own = namesOf(train);
  const taken = new Set(own.map((name) => name.toLowerCase()));
  const told = own
    .flatMap((name) => otherNames(train, name).map((other) => ({ name, other })))
    .filter(({ other }) => !taken.has(other.toLowerCase()))
    .toSorted((a, b) => b.other.length - a.other.length);
  return told.reduce((said, { name, other }) => {
    const word = other.replaceAll(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`);
    return said.replaceAll(new RegExp(`${EDGE}${word}${END}`, 'giu'), () => name);
  }, text);
}

const EDGE = String.raw`(?<![\p{L}\p{N}])`;
const END = String.raw`(?![\p{L}\p{N}])`;
