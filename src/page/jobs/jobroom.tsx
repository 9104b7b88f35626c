import { visible } from '../../telling/narrative/index.ts';
import { JobBar, jobsOf } from '../job/index.ts';
import type { Study } from '../study/index.ts';
import { Entries } from './entries.tsx';
import { Files } from './files.tsx';
import { JobList } from './joblist.tsx';
import { Gallery, Pictures } from './pictures.tsx';
import { Notices } from './notices.tsx';
import { words } from './words.ts';
import { Note, Sign } from './writing.tsx';
import './jobs.css';

/** The jobs of this browser, and the one that is open: what was written down, and by whom. */
export function JobRoom({ study }: { readonly study: Study }) {
  const say = words();
  const jobs = jobsOf(study);
  const open = jobs.open.value;
  return (
    <div class="jobs">
      <Notices jobs={jobs} />
      <JobBar study={study} home />
      {open && (
        <section class="jobs-open" aria-label={say.open}>
          {open.complaint !== '' && (
            <p class="jobs-complaint">{say.complaint(visible(open.complaint))}</p>
          )}
          <div class="jobs-writing">
            <Note jobs={jobs} />
            <Pictures jobs={jobs} />
            <Sign jobs={jobs} job={open} />
          </div>
          <div class="jobs-written">
            <Entries jobs={jobs} job={open} />
            <Gallery jobs={jobs} job={open} />
          </div>
        </section>
      )}
      <Files study={study} />
      <JobList jobs={jobs} />
    </div>
  );
}
