import fastStringWidth from 'fast-string-width';

/** The columns that a text takes on a screen: two for each wide character. */
export function width(text: string): number {
  // The library's tables of characters take longer to load than all else that is told here.
  return NARROW.test(text) ? text.length : fastStringWidth(text);
}

// Latin letters and the signs that our own messages use, a column each.
const NARROW = /^[\x20-\x7e\xa0-\xac\xae-\u02ff≈’…−“”■○●┌│└]*$/u;

/**
 * Breaks a text between words; inside one only where it is wider than a line, and then with
 * an ellipsis, so that nobody takes the break for a blank. Lines after the first start with
 * `hang`. Nothing is cut off.
 */
export function wrap(text: string, columns: number, hang = ''): string[] {
  if (width(text) <= columns) return [text];
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(BREAK).flatMap((w) => split(w, columns - width(hang)))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (width(longer) <= columns || line === '') {
      line = longer;
    } else {
      lines.push(line);
      line = hang + word;
    }
  }
  return [...lines, line];
}

// Between words, but not beside the sign of "27/11 = 2.455".
const BREAK = /(?<![=≈]) (?![=])/u;

function split(word: string, columns: number): string[] {
  if (width(word) <= columns) return [word];
  const pieces: string[] = [];
  let piece = '';
  for (const { segment } of new Intl.Segmenter().segment(word)) {
    if (width(piece + segment) >= columns && piece !== '') {
      pieces.push(`${piece}…`);
      piece = '';
    }
    piece += segment;
  }
  return [...pieces, piece];
}
