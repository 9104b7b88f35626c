import type { Inquiry, Prompt } from '../../asking/describe/index.ts';
import type { Language, Voice } from '../narrative/index.ts';
import { ENTRIES_EN, ENTRY_OPTIONS_EN } from './entries.en.ts';
import { ENTRIES_ES, ENTRY_OPTIONS_ES } from './entries.es.ts';
import type { EntryWords } from './entrywords.ts';
import { TRAIN_EN } from './train.en.ts';
import { TRAIN_ES } from './train.es.ts';

const TRAIN = { en: TRAIN_EN, es: TRAIN_ES };
const ENTRIES = { en: ENTRIES_EN, es: ENTRIES_ES };
const OPTIONS = { en: ENTRY_OPTIONS_EN, es: ENTRY_OPTIONS_ES };

interface Asking {
  readonly question: string;
  /** '' for none. */
  readonly hint: string;
}

/** The question of a prompt in a round, and the line below it; things go by their reader's names. */
export function questionOf(inquiry: Inquiry, prompt: Prompt, voice: Voice): Asking {
  const { language } = voice;
  if (inquiry.topic === 'entry') return entryQuestion(inquiry, prompt, voice);
  const it = aboutWhat(inquiry, prompt, voice);
  const { word: key = prompt.key } = prompt;
  const kind = key === 'first' ? `${inquiry.answers.get('kind')}` : inquiry.topic;
  const { ask, hint } = TRAIN[language];
  return {
    question: worded(picked((ask as Table)[key], kind), it),
    hint: worded(picked((hint as Table)[key], kind), it),
  };
}

/** An option of the program's own, in the reader's words. */
export function optionText(prompt: Prompt, option: string, language: Language): string {
  const { key, word = key, kind } = prompt;
  if (kind === 'way') return wordIn(TRAIN[language].options, 'lets', option) ?? option;
  if (word === 'know?' || word === 'change?')
    return labelOf(`${plain(key.replace(/\?$/u, ''))}.${option}`, language);
  const its = wordIn(TRAIN[language].options, word, option);
  if (its !== undefined) return its;
  return among(word, option, language) ?? option;
}

/** What a word of the file's own is called that stands under a path; undefined for every other. */
export function valueWord(path: string, value: string, language: Language): string | undefined {
  const its = among(path, value, language) ?? wordIn(TRAIN[language].options, 'lets', value);
  return its === undefined ? undefined : lower(its);
}

function among(path: string, value: string, language: Language): string | undefined {
  const [all, last] = [OPTIONS[language], plain(path).split('.').at(-1) ?? ''];
  return wordIn(all, plain(path), value) ?? wordIn(all, last, value);
}

/** What a section or a key of the file is called, by the keys that lead to it. */
export function labelOf(path: string, language: Language): string {
  const label = found(ENTRIES[language], path)?.[0];
  return label || (path.split('.').at(-1) ?? path);
}

/** The paths of what is asked by forms that nobody gave words in a language; a test reads it. */
export function isWorded(path: string, language: Language): boolean {
  return found(ENTRIES[language], path) !== undefined;
}

function entryQuestion(inquiry: Inquiry, prompt: Prompt, voice: Voice): Asking {
  const { language } = voice;
  const { section = '', changes, answers } = inquiry;
  const { key, word = key } = prompt;
  const path = plain(word);
  const [, question = '', hint = ''] = found(ENTRIES[language], path) ?? [];
  const of = changes?.name ?? answers.get(`${section}@`);
  const whole = typeof of === 'string' && of !== '' ? voice.called(of) : labelOf(section, language);
  const above = plain(key)
    .replace(/(?:\.\d+)*[?!+]$/u, '')
    .split('.')
    .slice(0, path === plain(key) && !/[?!+]$/u.test(key) ? -1 : undefined);
  // A limit or a shelf is asked as that of what it is of.
  const part = above.length > 1 ? `, ${lower(labelOf(above.join('.'), language))}` : '';
  const told = language === 'en' ? described(prompt) : '';
  const asked = question || told || `${labelOf(path, language)}?`;
  return { question: key.endsWith('@') ? asked : `${upper(whole)}${part}: ${lower(asked)}`, hint };
}

// Where nobody gave it words: what the file's own form says of it.
function described({ form }: Prompt): string {
  const pipe = (form as { readonly pipe?: readonly { type: string; description?: string }[] })
    ?.pipe;
  return pipe?.find(({ type }) => type === 'description')?.description ?? '';
}

// What the questions of a round speak of: the name of what is described, or the member.
function aboutWhat(inquiry: Inquiry, prompt: Prompt, voice: Voice): string {
  const { topic, changes, member, answers } = inquiry;
  if (prompt.about !== undefined) return prompt.about;
  if (topic === 'join') return voice.name(member ?? '');
  if (topic === 'gear') {
    const within = changes?.thing === 'gear' ? changes.within : answers.get('range');
    const gear = changes?.name ?? answers.get('gear') ?? '';
    return `${voice.called(`${within ?? ''}`)} ${voice.called(`${gear}`)}`;
  }
  return voice.called(`${changes?.name ?? answers.get('name') ?? ''}`);
}

// The keys alone: which of a list it is tells nothing, but of two that stand for two things.
function plain(key: string): string {
  return key.replace(/\.\d+(?=[.@])/gu, '').replace(/\.\d+\+$/u, '');
}

function found(words: EntryWords, path: string): EntryWords[string] | undefined {
  const steps = plain(path).split('.');
  for (let i = 0; i < steps.length; i++) {
    const its = words[steps.slice(i).join('.')];
    if (its) return its;
  }
  return undefined;
}

type Worded = string | ((it: string) => string);
type Table = Readonly<Record<string, Worded | Readonly<Record<string, Worded>> | undefined>>;

function wordIn(
  table: Readonly<Record<string, Readonly<Record<string, string>>>>,
  key: string,
  option: string,
): string | undefined {
  const its = Object.hasOwn(table, key) ? table[key] : undefined;
  return its && Object.hasOwn(its, option) ? its[option] : undefined;
}

function picked(entry: Table[string], kind: string): Worded {
  if (entry === undefined) return '';
  return typeof entry === 'object' ? (entry[kind] ?? '') : entry;
}

function worded(text: Worded, it: string): string {
  return upper(typeof text === 'string' ? text : text(it));
}

function upper(said: string): string {
  return said.charAt(0).toLocaleUpperCase() + said.slice(1);
}

function lower(said: string): string {
  return said.replace(
    /^(¿?)(.)/u,
    (_, mark: string, first: string) => mark + first.toLocaleLowerCase(),
  );
}
