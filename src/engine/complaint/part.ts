import { type Symptom, SYMPTOMS, WELL } from './symptoms.ts';
import {
  DENIAL,
  FILLERS,
  GEARS,
  HEATS,
  type Link,
  LINKS,
  LOADS,
  NOT,
  type Place,
  plainWords,
  REVVING,
  SHIFT,
} from './words.ts';

/** A part of a sentence: what it says is wrong, where, and when. */
export interface Part {
  readonly said: string;
  readonly link: Link;
  readonly symptoms: readonly Symptom[];
  /** Something is said not to be so: what else is meant by it, the driver must say. */
  readonly denies: boolean;
  readonly places: readonly Place[];
  readonly shift?: readonly [from: Place, to: Place];
  readonly when: { readonly heat?: 'cold' | 'hot'; readonly load?: 'light' | 'heavy' };
  /** When stands before what is wrong, and holds for what comes after it too. */
  readonly whenFirst: boolean;
  /** Gears and nothing else. */
  readonly bare: boolean;
  /** Gears that are said not to be among those before. */
  readonly not: boolean;
  /** The part behind it is tied to it by "and", and says what is wrong with both. */
  readonly leads: boolean;
}

export function partsOf(sentence: string): Part[] {
  const parts = cut(sentence).map(({ said, link }) => partOf(said, link));
  return parts.map((part, k) => {
    const next = parts.slice(k + 1).find(({ bare }) => !bare);
    const tied = parts[k + 1]?.link === 'and' && next;
    const leads = tied ? next.symptoms.length > 0 && next.places.length > 0 && next.fronted : false;
    return { ...part, leads };
  });
}

function cut(sentence: string): { said: string; link: Link }[] {
  const pieces: { said: string; link: Link }[] = [{ said: '', link: 'start' }];
  for (const token of sentence.replace(REVVING, 'just revs').split(/(,(?!\d)|\s+)/u)) {
    const last = pieces.at(-1) as { said: string; link: Link };
    if (token === ',') pieces.push({ said: '', link: 'comma' });
    else {
      const link = LINKS.find(([, form]) => form.test(`${token} `))?.[0];
      if (!link) last.said += token;
      else if (last.said.trim() === '') last.link = last.link === 'start' ? 'start' : link;
      else pieces.push({ said: '', link });
    }
  }
  return pieces
    .map(({ said, link }) => ({ said: said.trim(), link }))
    .filter(({ said }) => plainWords(said) !== '');
}

function partOf(said: string, link: Link): Omit<Part, 'leads'> & { readonly fronted: boolean } {
  const words = plainWords(said);
  const heat = HEATS.find(([, form]) => form.test(words))?.[0];
  const load = LOADS.find(([, form]) => form.test(words))?.[0];
  const without = GEARS.reduce((rest, [, form]) => rest.replace(form, ' '), words);
  const [first = ''] = words.replace(/^(?:the|in|la|el|en) /u, '').split(' ');
  return {
    said,
    link,
    ...symptomsIn(words),
    ...whereIn(words),
    when: { ...(heat && { heat }), ...(load && { load }) },
    whenFirst: whenIsFirst(words),
    bare: without.replace(FILLERS, '').trim() === '',
    not: NOT.test(words),
    fronted: GEARS.some(([, form]) => form.test(first)),
  };
}

function whenIsFirst(words: string): boolean {
  const first = (forms: readonly RegExp[]) =>
    Math.min(...forms.map((form) => form.exec(words)?.index ?? Infinity));
  const when = first([...HEATS, ...LOADS].map(([, form]) => form));
  return when < first(SYMPTOMS.flatMap(([, forms]) => forms));
}

// A symptom behind a denial that is not its own ("no reverse" is) is none: "it does not slip".
function symptomsIn(words: string): Pick<Part, 'symptoms' | 'denies'> {
  let rest = words;
  let denies = false;
  const symptoms: Symptom[] = [];
  for (const [symptom, forms] of SYMPTOMS) {
    const said = forms.map((form) => form.exec(rest)).find((match) => match !== null);
    if (!said) continue;
    if (DENIAL.test(rest.slice(0, said.index))) denies = true;
    else symptoms.push(symptom);
    rest = `${rest.slice(0, said.index)} ${rest.slice(said.index + said[0].length)}`;
  }
  const wrong = symptoms.filter((symptom) => !WELL.has(symptom));
  const well = symptoms.find((symptom) => WELL.has(symptom));
  return { symptoms: wrong.length > 0 || !well ? wrong : [well], denies };
}

function whereIn(words: string): Pick<Part, 'places' | 'shift'> {
  const groups = SHIFT.exec(words)?.groups;
  const [from, to] = [placeOf(groups?.['from']), placeOf(groups?.['to'])];
  if (from && to) return { places: [], shift: [from, to] };
  return { places: GEARS.flatMap(([place, form]) => (form.test(words) ? [place] : [])) };
}

function placeOf(word: string | undefined): Place | undefined {
  return word === undefined ? undefined : GEARS.find(([, form]) => form.test(word))?.[0];
}
