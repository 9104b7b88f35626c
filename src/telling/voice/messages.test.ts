import { resolve } from 'node:path';
import { expect, it } from 'vitest';
import { readSources } from '../../../test/sources.ts';
import { en } from './en.ts';
import { messageOf } from './message.ts';

// Everything that our code writes between quotes, but for the messages themselves; `…${x}…` with
// what is put in left open.
const sources = readSources()
  .filter(
    ({ path }) => /^src\/.*\.tsx?$/u.test(path) && !/\.test\.tsx?$|\/(?:en|es)\.ts$/u.test(path),
  )
  .map(({ text }) => text)
  .join('\n');
const quoted = new Set(
  [...sources.matchAll(/'((?:[^'\\\n]|\\.)*)'/gu)].map(([, text = '']) => text),
);
const words = new Set(sources.match(/[a-z]\w*/giu));
const open = [...sources.matchAll(/`([^`\s]*)\$\{[^`]*?\}([^`\s]*)`/gu)]
  .map(([, before = '', after = '']) => [before, after] as const)
  .filter(([before, after]) => /^[a-z-]+(?:[ .][a-z]+)*\.$/u.test(before) && !after.includes('$'));

/** Whether some code says a message: by its name, or by a beginning and a word that stands for itself. */
function isSaid(id: string): boolean {
  if (quoted.has(id)) return true;
  return open.some(([before, after]) => {
    if (!id.startsWith(before) || !id.endsWith(after)) return false;
    const rest = id.slice(before.length, id.length - after.length);
    return quoted.has(rest) || words.has(rest);
  });
}

it('has no message that nobody says', () => {
  expect(Object.keys(en).filter((id) => !isSaid(id))).toEqual([]);
});

it('would find one', () => {
  expect(isSaid('fact.carries')).toBe(true);
  expect(['fact.flies', 'remark.nobody says so', 'verb.sing'].map(isSaid)).toEqual([
    false,
    false,
    false,
  ]);
});

it('names a message that is missing, and its language, when it is built and when it is said', async () => {
  const build = resolve('scripts/messages.mjs'); // no types: it is the build's
  const { mustBeWhole } = (await import(build)) as { mustBeWhole(texts: object): void };
  const said = /no message fact.flies in es/u;
  expect(() => mustBeWhole({ en: { 'fact.flies': 'It flies.' }, es: {} })).toThrow(said);
  expect(() => messageOf('es', 'fact.flies' as never)).toThrow(said);
  expect(() =>
    mustBeWhole({ en: { 'fact.flies': 'It flies.' }, es: { 'fact.flies': '' } }),
  ).not.toThrow();
});

// The page is built without what the command alone says: so no file that the page takes may say it.
it('is said by the command alone, what the page is built without', async () => {
  const build = resolve('scripts/messages.mjs');
  const { OF_THE_COMMAND } = (await import(build)) as { OF_THE_COMMAND: RegExp };
  const left = Object.keys(en).filter((id) => OF_THE_COMMAND.test(id));
  expect(left.length).toBeGreaterThan(100);
  const others = readSources().filter(({ path }) => {
    const isOurs = /^src\/.*(?<!\.test)\.tsx?$/u.test(path) && !path.includes('/voice/');
    return isOurs && !/^src\/(?:command|doors\/cli|telling\/report)\//u.test(path);
  });
  const saying = others.flatMap(({ path, text }) => {
    const whole = new Set([...text.matchAll(/'([^'\n]+)'/gu)].map(([, id = '']) => id));
    const begun = [...text.matchAll(/`([a-z]+\.[a-z .]*)\$\{/gu)].map(([, start = '']) => start);
    const said = left.filter((id) => whole.has(id) || begun.some((start) => id.startsWith(start)));
    return said.map((id) => `${path}: ${id}`);
  });
  expect(saying).toEqual([]);
});
