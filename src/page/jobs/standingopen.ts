import { openIn } from '../../asking/build/index.ts';
import { openJob } from '../../asking/job/index.ts';
import { type Held, type JobDesk, textOf } from '../job/index.ts';

/** What a job has measured and not closed; nothing where its train is not at hand. */
export function standingOpen(jobs: JobDesk, held: Held | undefined): readonly string[] {
  const train = held && jobs.trainOf(held);
  if (!train || held.job.header === '') return [];
  return openIn(train, openJob({ called: held.job.name, text: textOf(held) }));
}
