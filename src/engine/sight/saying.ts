import { OUTCOMES, type OutcomeWord, type Sureness } from '../experience/index.ts';
import { splitConditions } from './condition.ts';
import type { Sight } from './outcome.ts';
import type { Test } from './test.ts';

/** What is meant by an outcome as a person writes it ("slips", "2.429"); undefined for nothing. */
export function sightMeant(said: string, test: Test): Sight | undefined {
  const word = said.trim().toLowerCase().replace(/\s+/g, ' ');
  if (word === 'as it should' || word === 'not as it should') return { saw: word };
  if (hasRatio(test)) {
    const bare = word.replace(/^(drives|brakes) at /, '').replace(',', '.');
    const ratio = Number(bare.replace('\u2212', '-'));
    if (word !== '' && Number.isFinite(ratio) && ratio !== 0) return { saw: 'ratio', ratio };
  }
  const words: readonly string[] = wordsOf(test);
  const ours = [word, ...(SAID.get(word) ?? [])].find((its) => words.includes(its));
  return ours === undefined ? undefined : { saw: ours as OutcomeWord };
}

/** Whether its outcome may be a ratio. */
export function hasRatio({ test }: Test): boolean {
  return test === 'under power' || test === 'coast';
}

/** The words for what a test can show. */
export function wordsOf(test: Test): readonly OutcomeWord[] {
  return OUTCOMES[test.test];
}

/** Other words for an outcome, each with ours, of one test or another. */
export const SAID: ReadonlyMap<string, readonly OutcomeWord[]> = new Map([
  ['neutral', ['no drive', 'runs free']],
  ['nothing', ['no drive', 'none']],
  ['runs up', ['slips', 'flares']],
  ['flares', ['slips']],
  ['slips', ['flares']],
  ['tied up', ['ties up']],
  ['binds', ['ties up']],
  ['other ratio', ['another ratio']],
  ['engine brakes', ['brakes']],
  ['coasts', ['runs free']],
  ['free', ['runs free']],
  ['turned', ['turns']],
  ['locked', ['locks']],
  ['thuds', ['thud']],
  ['hisses', ['hiss']],
  ['ok', ['good', 'normal', 'right', 'clear', 'in place', 'quiet', 'one way']],
  ['slips both ways', ['turns both ways']],
  ['seized', ['locks both ways']],
  ['backwards', ['wrong way', 'wrong way round']],
  ['split', ['cut']],
  ['hard', ['cut']],
  ['good', ['normal', 'right', 'drives']],
  ['normal', ['good', 'right', 'quiet']],
  ['debris', ['metal']],
  ['silent', ['quiet']],
  ['noise', ['growls']],
  ['whines', ['growls']],
  ['none', ['clear', 'quiet', 'no drive']],
  ['adjusted', ['right']],
] as const);

/** The outcome, how sure it is, and the conditions, wherever they stand: ["slips hot", "not sure"]. */
export function sayingOf(words: readonly unknown[]) {
  const named: string[] = [];
  const rest: unknown[] = [];
  let sure: Sureness = 'sure';
  let known = true;
  words.forEach((word, k) => {
    const text = `${word as string}`.trim().toLowerCase();
    if (k > 0 && (text === 'sure' || text === 'not sure')) sure = text;
    else if (typeof word === 'string') {
      const parts = splitConditions(` ${word}`);
      named.push(...parts.said);
      if (parts.rest !== '') rest.push(parts.rest);
    } else rest.push(word);
  });
  if (rest.length > 1) known = false;
  return { said: rest[0], sure, named, known };
}

/** "slips, not sure" in its parts; a decimal comma stays. */
export function split(text: string): string[] {
  return text.split(/,(?!\d)/).map((part) => part.trim());
}
