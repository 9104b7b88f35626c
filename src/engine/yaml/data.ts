import type { Node } from './node.ts';
import type { Value } from './write.ts';

/** What a file says, without where it says it. An empty section says nothing: null. */
export type Data = string | number | boolean | null | readonly Data[] | ReadonlyMap<string, Data>;

/** `names`: what is to be read in place of the key or scalar that starts at an offset. */
export function dataOf(node: Node, names: ReadonlyMap<number, string> = new Map()): Data {
  switch (node.kind) {
    case 'scalar':
      return names.get(node.at.from) ?? node.value;
    case 'list':
      return node.items.map((item) => dataOf(item, names));
    case 'section':
      if (node.entries.length === 0) return null;
      return new Map(
        node.entries.map(({ key, keyAt, value }) => [
          names.get(keyAt.from) ?? key,
          dataOf(value, names),
        ]),
      );
  }
}

/** Equal, and entries in the same order. */
export function same(a: Data, b: Data): boolean {
  if (a instanceof Map) return b instanceof Map && same([...a].flat(), [...b].flat());
  if (!Array.isArray(a)) return a === b;
  return Array.isArray(b) && a.length === b.length && a.every((item, i) => same(item, b[i]));
}

/** With `value` at the path; undefined where the path leads through something else. */
export function withEntry(data: Data, path: readonly string[], value: Value): Data | undefined {
  const [key, ...rest] = path;
  if (key === undefined) return plain(value);
  if (Array.isArray(data)) {
    const inner =
      data[Number(key)] === undefined ? undefined : withEntry(data[Number(key)], rest, value);
    return inner === undefined ? undefined : data.with(Number(key), inner);
  }
  const entries = data === null ? new Map<string, Data>() : data;
  if (!(entries instanceof Map)) return undefined;
  const inner = withEntry(entries.get(key) ?? null, rest, value);
  return inner === undefined ? undefined : new Map(entries).set(key, inner);
}

/** Without what is at the path; undefined where there is nothing. */
export function withoutEntry(data: Data, path: readonly string[]): Data | undefined {
  const [key = '', ...rest] = path;
  if (Array.isArray(data)) {
    const index = Number(key);
    if (data[index] === undefined) return undefined;
    if (rest.length === 0) return data.toSpliced(index, 1);
    const inner = withoutEntry(data[index], rest);
    return inner === undefined ? undefined : data.with(index, inner);
  }
  if (!(data instanceof Map) || !data.has(key)) return undefined;
  const entries = new Map<string, Data>(data);
  if (rest.length === 0) entries.delete(key);
  else {
    const inner = withoutEntry(entries.get(key) ?? null, rest);
    if (inner === undefined) return undefined;
    entries.set(key, inner);
  }
  return entries.size === 0 ? null : entries;
}

function plain(value: Value): Data {
  if (value instanceof Map) {
    return value.size === 0 ? null : new Map([...value].map(([key, its]) => [key, plain(its)]));
  }
  return Array.isArray(value) ? value.map(plain) : (value as string | number);
}
