/** Where something stands in a file: what a person looks for in an editor. */
export interface Place {
  /** From 1. */
  readonly line: number;
  /** From 1, in UTF-16 units, as editors count. */
  readonly column: number;
  /** Of the part that stands on this line; at least 1, even where something is missing. */
  readonly length: number;
}

/** From an offset up to, not including, another. */
export interface Passage {
  readonly from: number;
  readonly to: number;
}

/** The lines of a text: turns passages into places. A passage beyond the text is drawn back into it. */
export class Lines {
  private readonly starts: number[] = [0];
  private readonly text: string;

  constructor(text: string) {
    this.text = text;
    for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', end + 1)) {
      this.starts.push(end + 1);
    }
  }

  place({ from, to }: Passage): Place {
    const start = Math.max(0, Math.min(from, this.lastOffset()));
    const line = this.lineOf(start);
    const begin = this.starts[line] as number;
    const end = this.endOfLine(line);
    return {
      line: line + 1,
      column: start - begin + 1,
      length: Math.max(1, Math.min(to, end) - start),
    };
  }

  // What is missing at the end of a file is pointed at in its last line that says something.
  private lastOffset(): number {
    return this.text.trimEnd().length;
  }

  private endOfLine(line: number): number {
    const next = this.starts[line + 1];
    if (next === undefined) return this.text.length;
    return this.text[next - 2] === '\r' ? next - 2 : next - 1;
  }

  // The last line that starts at or before the offset.
  private lineOf(offset: number): number {
    let [low, high] = [0, this.starts.length - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.starts[middle] as number) <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}
