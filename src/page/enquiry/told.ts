import type { FoldedEntry, FoldedJob } from '../../shop/records/index.ts';
import { type Observation } from '../../engine/suspects/index.ts';
import { testText } from '../../engine/sight/index.ts';

/** An entry of what was seen, in the words of a file; of a note, `of` is ''. */
export interface SeenEntry {
  readonly entry: FoldedEntry;
  readonly of: string;
  readonly text: string;
}

/** All that was written down of what was seen, what was struck too, the last first. */
export function seenEntries({ entries }: FoldedJob): SeenEntry[] {
  return entries
    .flatMap((entry) => {
      const { told } = entry;
      if (told?.kind === 'note') return [{ entry, of: '', text: told.note }];
      return told?.kind === 'seen' ? [{ entry, of: told.of, text: told.text }] : [];
    })
    .toReversed();
}

/** What stands of a test, by its name in a file. */
export function standingOf(test: string, observations: readonly Observation[]): Observation[] {
  return observations.filter(
    (one) => testText(one.test) === test || testText(one.test).startsWith(`${test} `),
  );
}
