import type { Inquiry, Observation } from '../../engine/suspects/index.ts';
import { readSeen } from '../../engine/suspects/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import { type FoldedJob, standing } from './fold.ts';
import { atEntry, fileText } from './line.ts';

/** What was seen and stands: all of it, for a test may be made twice. */
export function seenIn(
  job: FoldedJob,
  inquiry: Inquiry,
): { readonly observations: readonly Observation[]; readonly problems: readonly Problem[] } {
  const all = standing(job, 'seen').map((entry) => {
    const { observations, problems } = readSeen(fileText(entry.told), inquiry);
    return { observations, problems: atEntry(entry, problems) };
  });
  return {
    observations: all.flatMap(({ observations }) => observations),
    problems: all.flatMap(({ problems }) => problems),
  };
}
