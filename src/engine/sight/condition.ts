import { HEATS, LOADS, SPEEDS, type Test } from './test.ts';

const LOADED: ReadonlySet<string> = new Set(['under power', 'coast', 'noise', 'shift']);
const WARMED: ReadonlySet<string> = new Set([
  ...LOADED,
  'engagement',
  'pressure',
  'device pressure',
]);

/** A test under conditions that were named ("heavy", "hot", "idle"); undefined where it has none such. */
export function under(test: Test, conditions: readonly string[]): Test | undefined {
  let its: Test | undefined = test;
  for (const word of conditions) its = its && underOne(its, word);
  return its;
}

function underOne(test: Test, word: string): Test | undefined {
  const load = LOADS.find((known) => known === word);
  if (load) return LOADED.has(test.test) ? ({ ...test, load } as Test) : undefined;
  const heat = HEATS.find((known) => known === word);
  if (heat) return WARMED.has(test.test) ? ({ ...test, heat } as Test) : undefined;
  const speed = SPEEDS.find((known) => known === word);
  return speed && test.test === 'pressure' ? { ...test, speed } : undefined;
}

/** What stands before the conditions at the end of a text, and these ("D 4 heavy hot"). */
export function splitConditions(text: string): { readonly rest: string; readonly said: string[] } {
  const said: string[] = [];
  let rest = text.trim();
  for (;;) {
    const word = WORDS.find((its) => rest.toLowerCase().endsWith(` ${its}`));
    if (word === undefined) return { rest, said };
    said.unshift(word);
    rest = rest.slice(0, -word.length).trim();
  }
}

// "fast idle" before "idle".
const WORDS = [...LOADS, ...HEATS, 'fast idle', 'full throttle', 'idle'];
