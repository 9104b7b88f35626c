/** A job file's text as it is kept: what stands above the entries, and each line below, once. */
export interface JobParts {
  /** With the line `entries:`; of a file that lost its header ''. */
  readonly header: string;
  /** Lines that cannot be read too: nothing of a file is thrown away. */
  readonly lines: readonly string[];
}

export function partsOf(text: string): JobParts {
  const lines = text.split(/\r?\n/u);
  const start = startOf(lines);
  const header = lines.slice(0, start).join('\n').trimEnd();
  const below = lines.slice(start).filter((line) => line !== 'entries:' && line.trim() !== '');
  return {
    header: header === '' ? '' : `${header}\nentries:\n`,
    lines: [...new Set(below)],
  };
}

/** Where the entries of a job file begin: at the line `entries:`, else at the first of them. */
export function startOf(lines: readonly string[]): number {
  const found = lines.findIndex((line) => line.startsWith('- ') || line === 'entries:');
  return found < 0 ? lines.length : found;
}

/** The text of a job file of these parts, as if each entry had been appended in turn. */
export function textOfParts({ header, lines }: JobParts): string {
  return `${header}${lines.map((line) => `\n${line}\n`).join('')}`;
}

/**
 * What somebody else's copy of the same job has beyond ours: the lines to be appended to ours, by
 * which the two are united. Nothing of either is lost, whoever wrote what since they were parted.
 */
export function linesBeyond(ours: Iterable<string>, theirs: JobParts): readonly string[] {
  const known = new Set(ours);
  return theirs.lines.filter((line) => !known.has(line));
}
