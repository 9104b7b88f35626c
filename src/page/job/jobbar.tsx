import { useState } from 'preact/hooks';
import { visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { room } from '../rooms/index.ts';
import type { Study } from '../study/index.ts';
import { type JobDesk, jobsOf } from './jobdesk.ts';
import { unkeptText } from './unkept.ts';
import { words } from './words.ts';
import './job.css';

/**
 * For the head of a room that writes into the job: which one is open, or an offer to begin one; and
 * why the last thing written is not kept.
 */
export function JobBar({ study }: { readonly study: Study }) {
  const say = words();
  const jobs = jobsOf(study);
  const open = jobs.open.value;
  const unkept = jobs.unkept.value;
  return (
    <div class="job-bar">
      {open ? (
        <button type="button" onClick={() => (room.value = 'job')}>
          {say.of(visible(open.unit))}
        </button>
      ) : (
        jobs.known.value && (
          <>
            <p>{say.none}</p>
            <Begin study={study} jobs={jobs} />
          </>
        )
      )}
      {open && <Initials jobs={jobs} />}
      <p class="job-unkept" role="alert">
        {unkept && unkeptText(unkept, study.file.name.value)}
      </p>
    </div>
  );
}

/** Opens a job for the train on the page, by one press where the initials are known. */
function Begin({ study, jobs }: { readonly study: Study; readonly jobs: JobDesk }) {
  const say = words();
  const { file } = study;
  const [unit, name] = useState(file.train.value?.name ?? '');
  const train = { called: file.name.value, text: file.text.value };
  return (
    <div class="row">
      <label class="job-field">
        {say.unit}
        <input value={unit} maxLength={80} onInput={(event) => name(event.currentTarget.value)} />
      </label>
      <Initials jobs={jobs} />
      <LargeButton main onPress={() => void jobs.begin({ unit: unit.trim(), train })}>
        {say.begin}
      </LargeButton>
    </div>
  );
}

/** Whose hand writes. */
function Initials({ jobs }: { readonly jobs: JobDesk }) {
  return (
    <label class="job-field job-initials">
      {words().initials}
      <input
        value={jobs.initials.value}
        maxLength={8}
        autoComplete="off"
        onInput={({ currentTarget }) => (jobs.initials.value = currentTarget.value.trim())}
      />
    </label>
  );
}
