/** A text as a Typst string: nothing in it can end the string, or be read as code or markup. */
export function quoted(text: string): string {
  const escaped = [...text].map((character) => {
    if (character === '"' || character === '\\') return `\\${character}`;
    // Typst reads a lone half of a pair as nothing at all; so do we, but say that it was there.
    if (/[\p{Cc}\p{Cs}\u2028\u2029]/u.test(character)) {
      return character === '\n' ? '\\n' : '\uFFFD';
    }
    return character;
  });
  return `"${escaped.join('')}"`;
}

/** A text to be set: a word that no line can hold gets places to break, which nobody sees. */
export function words(text: string): string {
  return quoted(text.replaceAll(LONG_WORD, (word) => word.replaceAll(PIECE, '$&\u200B')));
}

/** A call in code: `heading("Plates", level: 1)`. */
export function call(name: string, ...given: readonly string[]): string {
  return `${name}(${given.join(', ')})`;
}

/** An array; a comma behind the last one keeps an array of one an array. */
export function array(items: readonly string[]): string {
  return items.length === 0 ? '()' : `(${items.join(', ')},)`;
}

const LONG_WORD = /[^\s\u200B-]{17,}/gu;
const PIECE = /.{8}(?=.{4})/gsu;
