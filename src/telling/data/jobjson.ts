import type { Problem } from '../../engine/yaml/index.ts';
import type { FoldedJob } from '../../shop/records/index.ts';
import { problemText } from '../narrative/index.ts';
import type { Json } from './json.ts';

/** A job as it stands: every entry, with the id of what struck it or null. */
export function jobJson(job: FoldedJob, problems: readonly Problem[]): Json {
  return {
    unit: job.unit,
    train: job.train ? { file: job.train.file, hash: job.train.hash ?? null } : null,
    complaint: job.complaint,
    by: job.by,
    opened: job.at,
    entries: job.entries.map(({ id, at, who, told, strikes, struckBy, line }) => ({
      id,
      at,
      who,
      told: (told ?? null) as Json,
      strikes: strikes ? { ...strikes } : null,
      struckBy: struckBy?.id ?? null,
      line,
    })),
    problems: problems.map((problem) => ({
      line: problem.place.line,
      column: problem.place.column,
      message: problemText(problem),
    })),
  };
}
