import { type Form, mayBeAbsent, opened } from '../../engine/form/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { namesFor } from '../../engine/trainfile/index.ts';
import type { Value } from '../../engine/yaml/index.ts';
import type { Replies, Reply } from './asking.ts';
import { plates } from './plates.ts';
import { number, type Prompt, text, words } from './prompt.ts';

/**
 * What is asked of an entry of the train file, by the form that the reader walks, and what the
 * answers make of it. A section that is new to the file is asked for by itself.
 */
export class FormRound {
  /** As far as the answers tell which there are. */
  readonly prompts: Prompt[] = [];
  /** What is answered so far, as it stands in the file. */
  readonly value: Value | undefined;

  private readonly answers: Replies;
  private readonly train: Train;

  /** `now`: what the file says and is to be changed: then only what a person picks is asked. */
  constructor(form: Form, path: string, answers: Replies, train: Train, now?: Value) {
    this.answers = answers;
    this.train = train;
    this.value = this.ask(kindOf(form, now), path, now);
  }

  private ask(given: Form, path: string, now?: Value): Value | undefined {
    const form = opened(given);
    switch (form.type) {
      case 'strict_object':
        return this.object(form.entries, path, now);
      case 'record':
        return this.record(form.key, form.value, path);
      case 'array':
        return this.list(form.item, path);
      case 'strict_tuple':
        return this.tuple(form.items, path);
      case 'union':
        return this.oneOf(form, path);
      case 'literal':
        return form.literal as string;
      default:
        return this.said(leafPrompt(form, path, this.train));
    }
  }

  // What must stand there is asked; of the rest a person picks what they know.
  private object(entries: Readonly<Record<string, Form>>, path: string, now?: Value): Value {
    const all = Object.entries(entries);
    const isThere = now instanceof Map;
    const may = all.filter(([, its]) => isThere || mayBeAbsent(its)).map(([key]) => key);
    const values = new Map<string, Value | undefined>();
    const put = (key: string, its: Form) => values.set(key, this.ask(its, `${path}.${key}`));
    for (const [key, its] of all) if (!may.includes(key)) put(key, its);
    if (may.length > 0) {
      const which = { ...words(`${path}?`, may), kind: 'several' as const, optional: true };
      const known = this.said({ ...which, word: isThere ? 'change?' : 'know?' });
      const isKnown = (key: string) => Array.isArray(known) && known.includes(key);
      for (const [key, its] of all) if (may.includes(key) && isKnown(key)) put(key, its);
    }
    const kept = (isThere ? now : new Map()) as ReadonlyMap<string, Value>;
    const told = all.map(([key]) => [key, values.get(key) ?? kept.get(key)] as const);
    return new Map(told.filter((entry): entry is [string, Value] => !isNothing(entry[1])));
  }

  private record(keyForm: Form, its: Form, path: string): Value {
    const values = new Map<string, Value>();
    for (let i = 0; ; i++) {
      const key = {
        ...leafPrompt(keyForm, `${path}.${i}@`, this.train),
        without: [...values.keys()],
      };
      const named = this.said(key);
      if (typeof named !== 'string') break;
      const value = this.ask(its, `${path}.${i}`);
      if (value !== undefined) values.set(named, value);
      if (!this.more(path, i)) break;
    }
    return values;
  }

  private list(item: Form, path: string): Value {
    if (path.endsWith('.plates')) {
      const [prompts, value] = plates(path, this.answers);
      this.prompts.push(...prompts);
      return value;
    }
    const its = opened(item);
    if (its.type === 'picklist' || its.role) {
      const prompt = leafPrompt(its, path, this.train);
      return this.said({ ...prompt, kind: 'several' }) ?? [];
    }
    const leaf = its.type === 'string' ? leafPrompt(its, path, this.train) : undefined;
    if (leaf?.kind === 'quantity') return this.said({ ...leaf, kind: 'quantities' }) ?? [];
    const values: Value[] = [];
    for (let i = 0; ; i++) {
      const value = this.ask(item, `${path}.${i}`);
      if (value !== undefined) values.push(value);
      if (!this.more(path, i)) return values;
    }
  }

  private tuple(items: readonly Form[], path: string): Value | undefined {
    const all = items.map((item, i) => this.ask(item, `${path}.${i}`));
    return all.some((one) => one === undefined) ? undefined : (all as Value[]);
  }

  private oneOf(form: Form & { readonly type: 'union' }, path: string): Value | undefined {
    if (!form.telling) {
      const list = form.options.find(({ type }) => type === 'array');
      const its = list ?? form.options[0];
      return its && this.ask(its, path);
    }
    const kinds = tellingOf(form);
    const said = this.said({ ...words(`${path}!`, [...kinds.keys()]), word: `${path}!` });
    const its = typeof said === 'string' ? kinds.get(said) : undefined;
    return its && this.ask(its, path);
  }

  private more(path: string, i: number): boolean {
    const asked = { ...words(`${path}.${i}+`, ['yes', 'no']), word: 'more' };
    return this.said({ ...asked, about: path }) === 'yes';
  }

  private said(prompt: Prompt): Value | undefined {
    this.prompts.push(prompt);
    const said = this.answers.get(prompt.key);
    return (said ?? undefined) as Value | undefined;
  }
}

/** What each prompt starts from where the file says something already. */
export function startsFrom(path: string, now: Value | undefined): [string, Reply][] {
  if (now === undefined || path.endsWith('.plates')) return [];
  if (now instanceof Map) {
    const entries = [...(now as ReadonlyMap<string, Value>)];
    const keys: [string, Reply] = [`${path}?`, entries.map(([key]) => key)];
    return [keys, ...entries.flatMap(([key, its]) => startsFrom(`${path}.${key}`, its))];
  }
  if (!Array.isArray(now)) return [[path, now as Reply]];
  const list: readonly Value[] = now;
  return [
    [path, list.filter((one) => typeof one === 'string')],
    ...list.flatMap((one, i) => startsFrom(`${path}.${i}`, one)),
  ];
}

// Of a thing of several kinds that stands there: the kind that it is.
function kindOf(form: Form, now: Value | undefined): Form {
  const its = opened(form);
  if (its.type !== 'union' || !its.telling || !(now instanceof Map)) return its;
  return its.telling.find(([key]) => now.has(key))?.[1] ?? its;
}

// A kind is called by the first key that tells it.
function tellingOf({ telling = [] }: Form & { readonly type: 'union' }): Map<string, Form> {
  const kinds = new Map<string, Form>();
  for (const [key, its] of telling) if (![...kinds.values()].includes(its)) kinds.set(key, its);
  return kinds;
}

function isNothing(value: Value | undefined): boolean {
  return value === undefined || (value instanceof Map && value.size === 0);
}

/** The question of a single value. */
export function leafPrompt(form: Form, key: string, train: Train): Prompt {
  const { message, role } = form as Form & { readonly message?: string };
  const its = { form };
  const units = UNITS[message as keyof typeof UNITS];
  if (role && !role.own) {
    const options = namesFor(role, train, '');
    const of = role.names === 'member' || role.names === 'carried' ? 'members' : 'names';
    const open = of === 'members' || options.length === 0;
    return { ...words(key, options), ...its, of, open };
  }
  if (form.type === 'picklist') {
    const pick = { ...words(key, form.options ?? []), ...its };
    return message === 'way' ? { ...pick, kind: 'way' } : pick;
  }
  if (units) return { ...words(key, units), ...its, kind: 'quantity' };
  if (form.type === 'number') {
    const isWhole = message === 'count' || message === 'teeth';
    const whole = number(key, message === 'count' ? 100 : undefined);
    return { ...whole, ...its, kind: isWhole ? 'number' : 'decimal' };
  }
  return { ...text(key), ...its, kind: message === 'name' ? 'text' : 'note' };
}

// The units that a key offers, the one that most write first.
const UNITS = {
  length: ['mm', 'in'],
  air: ['kPa', 'bar', 'psi'],
  torque: ['Nm', 'lbf ft'],
  force: ['N', 'lbf'],
  volume: ['L', 'qt'],
} as const;
