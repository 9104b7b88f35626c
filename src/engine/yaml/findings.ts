import type { GeometryFinding } from '../train/index.ts';
import type { Lines, Span } from './place.ts';
import type { Oddity, Mistake, Problem } from './problem.ts';

// A person mends a few and reads again; a file of random bytes would fill the screen.
const MOST = 200;

/** Collects what is found in one file. After 200 it only counts. */
export class Findings {
  private readonly lines: Lines;
  private readonly kept: { readonly span: Span; readonly problem: Problem }[] = [];
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
  error(span: Span, mistake: Mistake | (() => Mistake)): void {
    this.errors += 1;
    this.keep(span, 'error', mistake);
  }

  warning(span: Span, oddity: Oddity | GeometryFinding): void {
    this.keep(span, 'warning', oddity);
  }

  /** A word that has another name now; told once a file. */
  renamed(span: Span, old: string, now: string): void {
    if (this.old.has(old)) return;
    this.old.add(old);
    this.keep(span, 'warning', { problem: 'renamed', old, now });
  }

  /** All of them in the order of the file. */
  list(): Problem[] {
    const sorted = this.kept
      .toSorted((a, b) => a.span.from - b.span.from)
      .map(({ problem }) => problem);
    const last = sorted.at(-1);
    if (last && this.found > MOST) {
      const count = this.found - MOST;
      sorted.push({ problem: 'and more', count, severity: 'error', place: last.place });
    }
    return sorted;
  }

  private keep(
    span: Span,
    severity: Problem['severity'],
    finding: Mistake | Oddity | GeometryFinding | (() => Mistake),
  ): void {
    this.found += 1;
    if (this.found > MOST) return;
    const told = typeof finding === 'function' ? finding() : finding;
    this.kept.push({ span, problem: { ...told, severity, place: this.lines.place(span) } });
  }
}
