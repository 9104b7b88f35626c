/** What can be written into a file of ours. A map keeps its order, and may have any key. */
export type Value = string | number | readonly Value[] | ReadonlyMap<string, Value>;

/** A section with its entries on lines of their own, each in flow style. */
export function sectionLines(
  key: string,
  entries: ReadonlyMap<string, Value>,
  json: boolean,
): string[] {
  const word = (text: string) => (json ? quoted(text) : scalarText(text));
  return [
    `${word(key)}:`,
    ...[...entries].map(([name, value]) => `  ${word(name)}: ${flowText(value, json)}`),
  ];
}

/** A value on one line; as JSON, or with quotes only where YAML needs them. */
export function flowText(value: Value, json: boolean): string {
  if (typeof value === 'number') return `${value}`;
  if (typeof value === 'string') return json ? quoted(value) : scalarText(value);
  if (value instanceof Map) {
    const entries = [...(value as ReadonlyMap<string, Value>)].map(([key, its]) => {
      return `${json ? quoted(key) : scalarText(key)}: ${flowText(its, json)}`;
    });
    return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
  }
  return `[${(value as readonly Value[]).map((item) => flowText(item, json)).join(', ')}]`;
}

// Plain YAML on one line, in flow style too: starts with a letter, holds nothing that YAML
// reads as a mark, and is not one of its words.
const PLAIN = /^\p{L}(?:[\p{L}\p{M}\p{N} ._+'()/&-]*[\p{L}\p{M}\p{N}.)])?$/u;
const WORDS = /^(?:true|false|null)$/i;

/** A text as YAML, without quotes where it may go without. */
export function scalarText(text: string): string {
  return PLAIN.test(text) && !WORDS.test(text) ? text : quoted(text);
}

/** A text in double quotes, as JSON and YAML both read it. */
export function quoted(text: string): string {
  // JSON lets these stand, and a train file does not.
  return JSON.stringify(text).replace(
    /[\x7f-\x9f\u2028\u2029\ufeff\ufffd-\uffff]/gu,
    (character) => {
      return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
    },
  );
}
