import type { GeometryFinding } from '../teeth/index.ts';
import type { Lines, Passage } from './place.ts';
import type { Oddity, FileMistake, Problem } from './problem.ts';

// A person mends a few and reads again; a file of random bytes would fill the screen.
const MOST = 200;

/** Collects what is found in one file. After 200 it only counts. */
export class Findings {
  private readonly lines: Lines;
  private readonly kept: { readonly passage: Passage; readonly problem: Problem }[] = [];
  private readonly old = new Set<string>();
  private found = 0;
  private errors = 0;

  constructor(lines: Lines) {
    this.lines = lines;
  }

  /** How many errors there are so far. */
  get errorCount(): number {
    return this.errors;
  }

  /** A mistake that takes searching to tell (a near name) is given as a function. */
  error(passage: Passage, mistake: FileMistake | (() => FileMistake)): void {
    this.errors += 1;
    this.keep(passage, 'error', mistake);
  }

  warning(passage: Passage, oddity: Oddity | GeometryFinding): void {
    this.keep(passage, 'warning', oddity);
  }

  /** A word that has another name now; told once a file. */
  renamed(passage: Passage, old: string, now: string): void {
    if (this.old.has(old)) return;
    this.old.add(old);
    this.keep(passage, 'warning', { problem: 'renamed', old, now });
  }

  /** All of them in the order of the file. */
  list(): Problem[] {
    const sorted = this.kept
      .toSorted((a, b) => a.passage.from - b.passage.from)
      .map(({ problem }) => problem);
    const last = sorted.at(-1);
    if (last && this.found > MOST) {
      const count = this.found - MOST;
      sorted.push({ problem: 'and more', count, severity: 'error', place: last.place });
    }
    return sorted;
  }

  private keep(
    passage: Passage,
    severity: Problem['severity'],
    finding: FileMistake | Oddity | GeometryFinding | (() => FileMistake),
  ): void {
    this.found += 1;
    if (this.found > MOST) return;
    const told = typeof finding === 'function' ? finding() : finding;
    this.kept.push({ passage, problem: { ...told, severity, place: this.lines.place(passage) } });
  }
}
