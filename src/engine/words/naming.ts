import { CASE, type NamesIn, type Train } from '../train/index.ts';
import { type Language, LANGUAGES } from './language.ts';
import { PARTS } from './parts.ts';

/**
 * What a thing of a train is called in a language: as the file says it, a member also by what its
 * set is called; else as it stands in the file. A
 * part that bears a member's name ("front ring", front.ring) is told alike. A set's parts are our
 * words; the case is the teller's.
 */
export function nameIn(language: Language, name: string, its: NamesIn = {}): string {
  const { names } = its;
  // Sets that share their planets work as one: "short + long".
  const sets = name.split(' + ');
  if (sets.length > 1) return sets.map((one) => nameIn(language, one, its)).join(' + ');
  const said = names?.get(name) ?? names?.get(name.replace('.', ' '));
  const dot = name.indexOf('.');
  if (said !== undefined || dot < 0) return said ?? name;
  const [set, part] = [name.slice(0, dot), name.slice(dot + 1)];
  const [whose, word] = [names?.get(set) ?? set, SET_PARTS.get(part)?.[language] ?? part];
  // In Spanish what it is stands before whose it is, but for a side.
  return language === 'es' && !SIDES.has(part) && SET_PARTS.has(part)
    ? `${word} ${whose}`
    : `${whose} ${word}`;
}

/** By which words a name of the train may be told in some language, its own left out. */
export function otherNames({ languages }: Pick<Train, 'languages'>, name: string): string[] {
  if (name === CASE) return [];
  const all = LANGUAGES.map((language) => nameIn(language, name, languages?.[language]));
  return [...new Set(all)].filter((told) => told !== name);
}

const { sun, ring, planet, carrier } = PARTS;
// A pair's planets, a one-way clutch's races, what a differential drives.
const SIDES = new Map([
  ['inner', { en: 'inner', es: 'interior' }],
  ['outer', { en: 'outer', es: 'exterior' }],
  ['left', { en: 'left', es: 'izquierdo' }],
  ['right', { en: 'right', es: 'derecho' }],
]);
const SET_PARTS: ReadonlyMap<string, Readonly<Record<Language, string>>> = new Map([
  ...Object.entries({ sun, ring, planet, carrier, pinion: { en: 'pinion', es: 'piñón' } }),
  ...SIDES,
]);
