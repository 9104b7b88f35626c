import { type Edited, put, remove } from './edit.ts';
import { type Data, dataOf } from './data.ts';
import { Findings } from './findings.ts';
import { Lines } from './place.ts';
import { parseTree } from './tree.ts';
import type { Value } from './write.ts';

/**
 * Makes the entry at a path say `value`, and touches only what differs: a set whose ring was
 * counted anew keeps its layout and its comments. Refused where a comment would be lost.
 */
export function mend(text: string, path: readonly string[], value: Value): Edited {
  const edited = mended(text, path, value, at(text, path));
  if ('text' in edited && comments(edited.text) < comments(text)) {
    return { refused: 'laid out by hand' };
  }
  return edited;
}

/** One edit after another as one; the first that is refused refuses all. */
export function inTurn(text: string, edits: readonly ((text: string) => Edited)[]): Edited {
  let edited: Edited = { text };
  for (const edit of edits) {
    if ('refused' in edited) return edited;
    edited = edit(edited.text);
  }
  return edited;
}

function mended(text: string, path: readonly string[], value: Value, now: Data): Edited {
  if (!(value instanceof Map) || !(now instanceof Map)) return put(text, path, value);
  const entries = [...(value as ReadonlyMap<string, Value>)];
  const changed = entries.filter(([key, its]) => !says(now.get(key), its));
  const gone = [...now.keys()].filter((key) => !value.has(key));
  return inTurn(text, [
    ...changed.map(([key, its]) => (before: string) => {
      return mended(before, [...path, key], its, now.get(key) ?? null);
    }),
    ...gone.map((key) => (before: string) => remove(before, [...path, key])),
  ]);
}

function says(data: Data | undefined, value: Value): boolean {
  if (data === undefined) return false;
  if (value instanceof Map) {
    const its = value as ReadonlyMap<string, Value>;
    if (its.size === 0) return data === null;
    const all = data instanceof Map && data.size === its.size;
    return all && [...its].every(([key, one]) => says((data as typeof its).get(key), one));
  }
  if (!Array.isArray(value)) return data === value;
  return (
    Array.isArray(data) &&
    data.length === value.length &&
    value.every((one, i) => says(data[i], one as Value))
  );
}

function at(text: string, path: readonly string[]): Data {
  const root = parseTree(text, new Findings(new Lines(text)));
  let data: Data = root ? dataOf(root) : null;
  for (const key of path) data = data instanceof Map ? (data.get(key) ?? null) : null;
  return data;
}

// What looks like one in quotes counts too: it is in both texts, or gone from one.
function comments(text: string): number {
  return [...text.matchAll(/(?:^|\s)#/gmu)].length;
}
