import { describe, expect, it } from 'vitest';
import { GLOSSARY } from '../src/engine/words/index.ts';
import { against, type Said, spokenIn } from './glossary.ts';
import { readSources } from './sources.ts';

const sources = readSources();

const pages = sources
  .filter(({ path }) => /^src\/(page|doors\/web)\/.*\.tsx?$/.test(path) && !path.includes('.test.'))
  .flatMap(spokenIn);
// The questions by which a train is described stand in a file a language.
const questions = sources
  .filter(({ path }) => /^src\/telling\/questions\/.*\.(en|es)\.ts$/.test(path))
  .flatMap(({ path, text }) =>
    [...text.matchAll(/[\s[]'([^'\n]+)'|`([^`]+)`/gu)].map(([, plain, open]): Said => {
      const said = plain ?? open ?? '';
      return path.endsWith('.en.ts') ? { where: path, en: said } : { where: path, es: said };
    }),
  );
// What a person reads of us in English: the README and the handbook without their examples, and
// what files say of themselves.
const papers = sources
  .filter(({ path }) => /^README\.md$|^docs\/.*\.md$|^trains\/[^/]*\.train\.yaml$/.test(path))
  .map(({ path, text }): Said => ({
    where: path,
    en: path.endsWith('.md') ? prose(text) : aboutOf(text),
  }));

describe('one word for one thing, in both languages', () => {
  it.each([
    ['the words of the page', pages],
    ['the questions by which a train is described', questions],
    ['the handbook and what our trains say of themselves', papers],
  ] as const)('%s', (_, said) => {
    expect(said.length).toBeGreaterThan(5);
    expect(said.flatMap((its) => against(GLOSSARY, its))).toEqual([]);
  });
});

describe('the glossary', () => {
  const concepts = Object.values(GLOSSARY);

  it('reads no word in two senses', () => {
    const read = concepts.flatMap(({ read: its = [], once = [] }) => [...its, ...once]);
    expect(read.filter((word, i) => read.indexOf(word) !== i)).toEqual([]);
  });

  it('calls no two things by one word', () => {
    for (const language of ['en', 'es'] as const) {
      const words = concepts.map((its) => its[language]);
      expect(words.filter((word, i) => words.indexOf(word) !== i)).toEqual([]);
    }
  });

  it('says itself what it lets others say', () => {
    const own = Object.entries(GLOSSARY).map(([name, its]) => ({
      where: name,
      en: its.en,
      es: its.es,
    }));
    expect(own.flatMap((its) => against(GLOSSARY, its))).toEqual([]);
  });
});

describe('the reading finds', () => {
  it.each([
    [{ where: 'a', en: 'The annulus is held.' }, 'a: "annulus": say ring'],
    [{ where: 'a', en: 'On the over-run it is free.' }, 'a: "On the over-run": say coast'],
    [{ where: 'a', en: 'It lets its member go.' }, 'a: "lets its member go": say released'],
    [{ where: 'a', es: 'un embrague unidireccional' }, 'say rueda libre'],
    [{ where: 'a', en: 'the sun', es: 'la rueda central' }, 'a: "sun" is said in English only'],
  ])('%j', (said, expected) => {
    expect(against(GLOSSARY, said).join()).toContain(expected);
  });

  it('every text of a view, also of a template', () => {
    const text =
      "spoken({ en: { a: 'one', b: { c: (n: number) => `${n} two` } }, es: { a: 'uno' } })";
    expect(spokenIn({ path: 'p', text })).toEqual([
      { where: 'p a', en: ' | one', es: ' | uno' },
      { where: 'p b.c', en: ' |  |  two' },
    ]);
  });
});

function prose(markdown: string): string {
  return markdown.replaceAll(/```[\s\S]*?```|`[^`]*`/g, ' ');
}

function aboutOf(train: string): string {
  return /^about: >-\n((?: .*\n|\n)*)/m.exec(train)?.[1] ?? '';
}
