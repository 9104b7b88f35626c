import { type Form, opened } from '../../engine/form/index.ts';
import { SECTIONS } from '../../engine/sections/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Value } from '../../engine/yaml/index.ts';
import type { Inquiry } from './asking.ts';
import { FormRound, leafPrompt } from './formround.ts';
import type { Prompt } from './prompt.ts';

/** Sections that rounds of their own ask for, or another room of the page. */
const OF_THEIR_OWN: ReadonlySet<string> = new Set([
  'name',
  'input',
  'output',
  'sets',
  'gear pairs',
  'joined',
  'devices',
  'ranges',
  'teardown',
]);

/** An entry of a section that is asked for by its form: the section as a whole, or one by name. */
export interface FormEntry {
  readonly section: string;
  /** '' of a section that has no names. */
  readonly name: string;
  readonly value: Value;
}

/** The sections that are asked for by their forms, in the order of the file. */
export const FORM_SECTIONS: readonly string[] = SECTIONS.map(({ key }) => key).filter(
  (key) => !OF_THEIR_OWN.has(key),
);

/** What the train says in these sections. */
export function entriesOf(train: Train): FormEntry[] {
  return FORM_SECTIONS.flatMap((section): FormEntry[] => {
    const value = SECTIONS.find(({ key }) => key === section)?.write(train);
    if (value === undefined) return [];
    if (!recordOf(section)) return [{ section, name: '', value }];
    return [...(value as ReadonlyMap<string, Value>)].map(([name, its]) => ({
      section,
      name,
      value: its,
    }));
  });
}

export function entryOf(train: Train, section: string, name: string): FormEntry | undefined {
  return entriesOf(train).find((one) => one.section === section && one.name === name);
}

/** The sections of which something can be told that the train does not say yet. */
export function sectionsToTell(train: Train): string[] {
  const said = entriesOf(train);
  return FORM_SECTIONS.filter((section) => {
    if (!recordOf(section)) return !said.some((one) => one.section === section);
    const prompt = namePrompt(section, train);
    return prompt.kind === 'text' || prompt.options.length > 0;
  });
}

/** The questions of an entry, and what the answers make of it. */
export function entryRound(
  inquiry: Inquiry,
  train: Train,
): [Prompt[], string[], Value | undefined] {
  const { section = '', answers, changes } = inquiry;
  const record = recordOf(section);
  const of = changes && entryOf(train, section, changes.name);
  if (!record) {
    const round = new FormRound(formOf(section), section, answers, train, of?.value);
    return [round.prompts, [section], round.value];
  }
  const asksName = changes ? [] : [namePrompt(section, train)];
  const name = changes ? changes.name : answers.get(`${section}@`);
  if (typeof name !== 'string') return [asksName, [section], undefined];
  const round = new FormRound(record.value, section, answers, train, of?.value);
  return [[...asksName, ...round.prompts], [section, name], round.value];
}

// Of which thing it is; what is told of already is changed, not told again.
function namePrompt(section: string, train: Train): Prompt {
  const record = recordOf(section);
  const there = entriesOf(train).flatMap((one) => (one.section === section ? [one.name] : []));
  const prompt = leafPrompt(record?.key as Form, `${section}@`, train);
  const options = prompt.options.filter((name) => !there.includes(name));
  return { ...prompt, options, without: there, open: false };
}

function formOf(section: string): Form {
  return SECTIONS.find(({ key }) => key === section)?.form as unknown as Form;
}

function recordOf(section: string): (Form & { readonly type: 'record' }) | undefined {
  const form = opened(formOf(section));
  return form.type === 'record' ? form : undefined;
}
