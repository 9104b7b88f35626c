import * as v from 'valibot';
import { or } from '../form/index.ts';
import type { Train } from '../train/index.ts';
import type { Findings, Passage, Value } from '../yaml/index.ts';

/**
 * A section of the train file, defined once: from here it is read, written, checked, completed and
 * described in the JSON Schema.
 */
export interface AnySection {
  readonly key: string;
  readonly form: v.GenericSchema;
  /** What the entry says of a train. */
  read(entry: never): Partial<Train>;
  /** As it stands in a file; undefined, or an empty map, where there is nothing to say. */
  write(train: Train): Value | undefined;
  /** Mistakes that no single name shows; of what could be read. */
  readonly check?: Check;
  /** Further mistakes, told only of a train in which nothing else is wrong. */
  readonly checkSound?: Check;
  /** Warnings, of a train without mistakes. */
  readonly lookAgain?: Check;
}

/** A section whose types are known: what the walk makes of its form is what it reads. */
export interface Section<
  Form extends v.GenericSchema,
  Says extends Partial<Train>,
> extends AnySection {
  readonly form: Form;
  /** Of a file that has no such entry, undefined. */
  read(entry: Entry<Form> | undefined): Says;
}

type Check = (train: Train, at: PlaceOf, findings: Findings) => void;

/** Where something stands, by the keys that lead to it. */
export type PlaceOf = (...path: string[]) => Passage;

/** What the walk makes of a form: a record becomes a map, which keeps its order and any key. */
export type Entry<Form extends v.GenericSchema> = Mapped<v.InferOutput<Form>>;
type Mapped<Its> = Its extends string | number | boolean | null | undefined | readonly unknown[]
  ? NonNullable<Its>
  : string extends keyof Its
    ? ReadonlyMap<string, Mapped<Its[keyof Its]>>
    : { readonly [Key in keyof Its]: Mapped<Its[Key]> };

/** Keeps a section's types. */
export function section<Form extends v.GenericSchema, Says extends Partial<Train>>(
  its: Section<Form, Says>,
): Section<Form, Says> {
  return its;
}

/** The form of a section of things by name. */
export const byName = <Key extends v.GenericSchema<string, string>, Its extends v.GenericSchema>(
  key: Key,
  its: Its,
  description: string,
) => v.pipe(v.nullish(v.record(key, its, or('section'))), v.description(description));

/**
 * A section of things by name that stand in the train as they stand in the file, the name under a key
 * of its own.
 */
export function listed<Field extends ListField, As extends string>(its: {
  readonly key: string;
  readonly field: Field;
  /** The key of the name in the train. */
  readonly as: As;
  readonly name: v.GenericSchema<string, string>;
  readonly entry: v.GenericSchema<unknown, Without<ItemOf<Field>, As>>;
  readonly description: string;
  readonly check?: Check;
  readonly checkSound?: Check;
}): Section<v.GenericSchema, Partial<Pick<Train, Field>>> {
  const { field, as, name, entry, description, ...rest } = its;
  type One = Readonly<Record<string, unknown>>;
  return {
    ...rest,
    form: byName(name, entry, description),
    read: (entries: ReadonlyMap<string, One> | undefined) => {
      if (!entries) return {};
      const list = listOf(entries, (named, one) => ({ [as]: named, ...one }));
      return { [field]: list } as unknown as Pick<Train, Field>;
    },
    write: (train) => {
      const list = (train[field] ?? []) as unknown as readonly One[];
      return new Map(
        list.map(({ [as]: named, ...one }) => [named as string, plainValue(one) as Value]),
      );
    },
  };
}

/** A section that stands in the train as it stands in the file. */
export function whole<Field extends 'engine' | 'car' | 'fluid'>(
  field: Field,
  form: v.GenericSchema<unknown, NonNullable<Train[Field]>>,
): Section<v.GenericSchema, Partial<Pick<Train, Field>>> {
  return {
    key: field,
    form: v.exactOptional(form),
    read: (entry: Train[Field]) =>
      entry ? ({ [field]: { ...entry } } as unknown as Pick<Train, Field>) : {},
    write: (train) => plainValue(train[field]),
  };
}

type ListField = {
  [Key in keyof Train]-?: NonNullable<Train[Key]> extends readonly object[] ? Key : never;
}[keyof Train];
type ItemOf<Field extends keyof Train> =
  NonNullable<Train[Field]> extends readonly (infer Item)[] ? Item : never;
type Without<Its, Key extends string> = Its extends unknown ? Omit<Its, Key> : never;

export function listOf<In, Out>(
  entries: ReadonlyMap<string, In> | undefined,
  build: (name: string, entry: In) => Out,
): Out[] {
  return [...(entries ?? [])].map(([name, entry]) => build(name, entry));
}

/** Sections and lists of texts, as they are. */
export function plainValue(data: unknown): Value | undefined {
  if (Array.isArray(data)) return data.map((item) => plainValue(item) as Value);
  if (typeof data !== 'object' || data === null) return data as string | undefined;
  if (data instanceof Map) {
    const entries = [...(data as ReadonlyMap<string, unknown>)];
    return new Map(entries.map(([key, its]) => [key, plainValue(its) as Value]));
  }
  return mapOf(
    Object.fromEntries(Object.entries(data).map(([key, its]) => [key, plainValue(its)])),
  );
}

export function mapOf(entries: Readonly<Record<string, Value | undefined>>): Value {
  return new Map(
    Object.entries(entries).filter((entry): entry is [string, Value] => entry[1] !== undefined),
  );
}
