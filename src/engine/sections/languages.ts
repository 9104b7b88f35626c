import * as v from 'valibot';
import { memberName, or, plainName, text } from '../form/index.ts';
import { CASE, namesOf, type Train } from '../train/index.ts';
import { GLOSSARY, type Language, LANGUAGES, nameIn } from '../words/index.ts';
import { type Findings, near } from '../yaml/index.ts';
import { byName, mapOf, type PlaceOf, section } from '../entries/index.ts';

const ITS_NAME = memberName('The name of anything in this file.', {
  as: 'named',
  names: 'anything',
});
const TOLD_NAME = plainName('What it is called in this language.');

const IN_A_LANGUAGE = v.exactOptional(
  v.pipe(
    v.strictObject(
      {
        name: v.exactOptional(plainName('What the train is called in this language.')),
        about: v.exactOptional(text('The paragraph for the reader in this language.')),
        names: byName(ITS_NAME, TOLD_NAME, 'What things are called, by their names in this file.'),
      },
      or('section'),
    ),
    v.description('What the train and its things are called in this language.'),
  ),
);

const BY_LANGUAGE = { en: IN_A_LANGUAGE, es: IN_A_LANGUAGE } satisfies Record<Language, unknown>;

export const IN_LANGUAGES = section({
  key: 'languages',
  form: v.exactOptional(
    v.pipe(
      v.strictObject(BY_LANGUAGE, or('section')),
      v.description('What the train and its things are called in other languages.'),
    ),
  ),
  read: (languages): Pick<Train, 'languages'> => {
    if (!languages) return {};
    const told = Object.entries(languages).map(([language, its]) => [language, { ...its }]);
    return { languages: Object.fromEntries(told) };
  },
  write: ({ languages }) => {
    if (!languages) return undefined;
    const told = Object.entries(languages).map(([language, { name, about, names }]) => {
      return [language, mapOf({ name, about, names: names && new Map(names) })] as const;
    });
    return new Map(told);
  },
  checkSound: (train, at, findings) => {
    for (const language of LANGUAGES) checkNames(train, language, at, findings);
  },
});

// A name of nobody; one by which a second thing goes too, in this language or as the file has it.
function checkNames(train: Train, language: Language, at: PlaceOf, findings: Findings): void {
  const its = train.languages?.[language];
  if (!its?.names) return;
  const own = namesOf(train);
  const known = new Set(own);
  const bearers = new Map(CASE_WORDS.map((word) => [word, CASE]));
  const unsaid = own.filter((name) => !its.names?.has(name));
  for (const name of unsaid) bearers.set(plain(nameIn(language, name, its)), name);
  for (const name of own) bearers.set(plain(name), name);
  for (const [name, said] of its.names) {
    const place = at('languages', language, 'names', name);
    const other = bearers.get(plain(said));
    if (name === CASE) findings.error(place, { problem: 'reserved name', name });
    else if (!known.has(name)) {
      findings.error(place, () => ({ problem: 'name of nobody', name, ...near(name, known) }));
    } else if (other !== undefined && plain(other) !== plain(name)) {
      findings.error(place, { problem: 'told alike', name, said, other });
    }
    if (known.has(name)) bearers.set(plain(said), name);
  }
}

const CASE_WORDS = [CASE, GLOSSARY['case']?.es ?? CASE];

// A part may bear the name of the member that it is.
function plain(name: string): string {
  return name
    .trim()
    .toLowerCase()
    .replaceAll(/[\s.]+/gu, ' ');
}
