import type { Problem } from '../../engine/yaml/index.ts';
import { foldJob, type FoldedJob, readJob } from '../../shop/records/index.ts';
import type { Session } from './session.ts';
import { refuseFile, textOf } from './source.ts';

/** The job of a file as it stands, and what of the file cannot be read; refuses what is no job. */
export function jobIn(
  file: string,
  session: Session,
): { readonly job: FoldedJob; readonly problems: readonly Problem[] } {
  const { job, problems } = readJob(textOf(file, session.world));
  if (job) return { job: foldJob(job), problems };
  return refuseFile(file, problems, session);
}
