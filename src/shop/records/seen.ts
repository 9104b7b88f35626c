import type { Inquiry } from '../../engine/cause/index.ts';
import { type SeenReading, readSeen } from '../../engine/suspects/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import type { Told } from './job.ts';
import { type FoldedJob, standing } from './fold.ts';
import { atEntry, fileText } from './line.ts';

/**
 * What was seen and stands: all of it, for a test may be made twice; and what a driver said. It is
 * read as one file, an entry a line: a gear that drives well scales the speeds of the others.
 */
export function seenIn(job: FoldedJob, inquiry: Inquiry): SeenReading {
  const entries = standing(job, 'seen');
  const read = readSeen(entries.map(({ told }) => `- ${fileText(told)}\n`).join(''), inquiry);
  const problems = read.problems.flatMap((problem) => {
    const entry = entries[problem.place.line - 1];
    return entry ? atEntry(entry, [problem]) : [];
  });
  return { ...read, problems };
}

/** What is wrong with an entry that would be written next into a job, or stands alone. */
export function seenProblems(
  told: Extract<Told, { readonly kind: 'seen' }>,
  inquiry: Inquiry,
  job?: FoldedJob,
): readonly Problem[] {
  const next = { id: '', at: '', who: '', told, line: 0 };
  const { problems } = seenIn(
    { ...(job ?? ALONE), entries: [...(job?.entries ?? []), next] },
    inquiry,
  );
  return problems.filter(({ place }) => place.line === 0);
}

const ALONE = { unit: '', complaint: '', by: '', at: '' };
