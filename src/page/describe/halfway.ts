import type { Inquiry, Reply } from '../../asking/describe/index.ts';
import { recalled, remember } from '../words/index.ts';

/** Where a person is in the questions: the round they are in, and what they said is all. */
export interface Halfway {
  readonly begun: Inquiry | undefined;
  readonly settled: ReadonlySet<string>;
}

/** Keeps it in this tab, of the very text that it was asked of. */
export function keepHalfway(text: string, { begun, settled }: Halfway): void {
  const kept: Kept = {
    text,
    settled: [...settled],
    ...(begun && { begun: { ...begun, answers: [...begun.answers], before: [...begun.before] } }),
  };
  remember(KEY, JSON.stringify(kept), ['tab']);
}

/** Where a person was with this text; undefined where nothing of it is kept. */
export function halfwayOf(text: string): Halfway | undefined {
  try {
    const { begun, settled, ...of } = JSON.parse(recalled(KEY, ['tab'])) as Kept;
    if (of.text !== text) return undefined;
    const inquiry = begun && {
      ...begun,
      answers: new Map(begun.answers),
      before: new Map(begun.before),
    };
    return { begun: inquiry, settled: new Set(settled) };
  } catch {
    return undefined;
  }
}

type Replied = readonly (readonly [key: string, said: Reply])[];

interface Kept {
  readonly text: string;
  readonly settled: readonly string[];
  readonly begun?: Omit<Inquiry, 'answers' | 'before'> & {
    readonly answers: Replied;
    readonly before: Replied;
  };
}

const KEY = 'round';
