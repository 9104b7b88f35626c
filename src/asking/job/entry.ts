import type { FoldedJob, JobEntry } from '../../shop/records/index.ts';
import { NoAnswer, unknown } from '../request/index.ts';

/** The entry whose id begins so: its first four letters are enough where no other begins so. */
export function entryMeant(given: string, { entries }: FoldedJob): JobEntry {
  const start = given.trim().toLowerCase();
  const [entry, ...others] = entries.filter(({ id }) => id.startsWith(start));
  if (entry && others.length === 0 && start.length >= 4) return entry;
  const ids = entries.map(({ id }) => id);
  throw new NoAnswer({ refused: 'no.entry', ...unknown(given, ids) });
}
