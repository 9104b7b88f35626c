/** The size of lettering, and from line to line. */
export const SIZE = 18;
export const LINE = 20;

/**
 * How wide words are, without a screen to ask: advance widths of Helvetica in thousandths of the
 * size, as its font metrics give them, which Arial and Liberation Sans share (from memory).
 */
export function widthOf(text: string, size: number): number {
  let thousandths = 0;
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    thousandths += WIDTHS[code - 32] ?? (code < 0x250 ? 600 : 1000);
  }
  return (thousandths * size) / 1000;
}

/** Breaks words into lines of at most `most` sheet units where they have blanks; no more lines. */
export function linesOf(text: string, size: number, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/u)) {
    const line = lines.at(-1);
    const longer = line === undefined ? word : `${line} ${word}`;
    if (line !== undefined && widthOf(longer, size) <= most) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

// From the blank to the tilde.
const WIDTHS: readonly number[] = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
  556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
  611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667,
  667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500,
  222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
];
