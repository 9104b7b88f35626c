import * as v from 'valibot';
import type { Expected } from '../yaml/index.ts';
import type { Role } from './role.ts';

/** What of a valibot definition is looked at by the walk, and by whoever offers what may come. */
export type Form =
  | { readonly type: 'exact_optional' | 'nullish'; readonly wrapped: Form; readonly role?: Role }
  | Union
  | {
      readonly type: 'record';
      readonly key: Leaf;
      readonly value: Form;
      readonly message: Expected;
      readonly role?: Role;
    }
  | StrictObject
  | List
  | {
      readonly type: 'strict_tuple';
      readonly items: readonly Form[];
      readonly message: Expected;
      readonly role?: Role;
    }
  | Leaf;

export type Entries = Readonly<Record<string, Form>>;

export interface StrictObject {
  readonly type: 'strict_object';
  readonly entries: Entries;
  readonly message: Expected;
  readonly role?: Role;
}

export interface Union {
  readonly type: 'union';
  readonly options: readonly Form[];
  readonly message: Expected;
  readonly telling?: readonly Telling[];
  readonly role?: Role;
}

interface List {
  readonly type: 'array';
  readonly item: Form;
  readonly message: Expected;
  readonly role?: Role;
}

export interface Leaf {
  readonly type: 'string' | 'number' | 'literal' | 'picklist';
  readonly message: Expected;
  /** Of a picklist. */
  readonly options?: readonly string[];
  /** Of a literal. */
  readonly literal?: string | number;
  readonly role?: Role;
}

/** A key, and the kind that it tells. */
export type Telling = readonly [key: string, form: Form];

/** What stands behind a mark that it may be left out. */
export function opened(form: Form): Form {
  return form.type === 'exact_optional' || form.type === 'nullish' ? opened(form.wrapped) : form;
}

/** The form that a step leads to. */
export function within(form: Form, step: string): Form | undefined {
  switch (form.type) {
    case 'record':
      return form.value;
    case 'strict_object':
      return Object.hasOwn(form.entries, step) ? form.entries[step] : undefined;
    case 'array':
      return form.item;
    case 'strict_tuple':
      return form.items[Number(step)];
    case 'union':
      return form.options.map((option) => within(option, step)).find((its) => its !== undefined);
    default:
      return undefined;
  }
}

export function mayBeAbsent(form: Form): boolean {
  return form.type === 'exact_optional' || form.type === 'nullish';
}

export function fits(form: Form, value: unknown): boolean {
  return v.is(form as unknown as v.GenericSchema, value);
}

/**
 * Things of several kinds. `telling` lists the keys by which a kind is known, the first of them that
 * stands there.
 */
export function kinds<const Options extends readonly v.GenericSchema[]>(
  options: Options,
  telling: readonly (readonly [key: string, option: Options[number]])[],
  message: Expected,
) {
  return { ...v.union(options, message), telling };
}
