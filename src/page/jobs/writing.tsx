import { useState } from 'preact/hooks';
import type { FoldedJob } from '../../shop/records/index.ts';
import { LargeButton } from '../controls/index.ts';
import type { JobDesk } from '../job/index.ts';
import { Unsigned } from './unsigned.tsx';
import { words } from './words.ts';

/** A note, in a person's own words; it stays in its box until it is kept. */
export function Note({ jobs }: { readonly jobs: JobDesk }) {
  const say = words();
  const [note, type] = useState('');
  const add = async () => {
    if ((await jobs.write({ kind: 'note', note: note.trim() })) === 'kept') type(unless(note));
  };
  return (
    <div class="row jobs-note">
      <label class="job-field">
        {say.note}
        <textarea
          rows={2}
          maxLength={2000}
          value={note}
          onInput={({ currentTarget }) => type(currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) void add();
          }}
        />
      </label>
      <LargeButton main disabled={note.trim() === ''} onPress={() => void add()}>
        {say.addNote}
      </LargeButton>
    </div>
  );
}

/** Initials under what was done; what stands open is told, and prevents nothing. */
export function Sign({ jobs, job }: { readonly jobs: JobDesk; readonly job: FoldedJob }) {
  const say = words();
  const [what, type] = useState('');
  const sign = async () => {
    if ((await jobs.write({ kind: 'signed', what: what.trim() })) === 'kept') type(unless(what));
  };
  const signed = job.entries.some(({ told, struckBy }) => told?.kind === 'signed' && !struckBy);
  return (
    <div class="jobs-sign">
      <Unsigned jobs={jobs} job={job} signed={signed} />
      <div class="row">
        <label class="job-field">
          {say.signWhat}
          <input
            value={what}
            maxLength={200}
            placeholder={say.signExample}
            onInput={({ currentTarget }) => type(currentTarget.value)}
            onKeyDown={({ key }) => key === 'Enter' && what.trim() !== '' && void sign()}
          />
        </label>
        <LargeButton main disabled={what.trim() === ''} onPress={() => void sign()}>
          {say.sign(jobs.initials.value)}
        </LargeButton>
      </div>
    </div>
  );
}

// Empties a box, unless something else was typed there while the first was being kept.
function unless(kept: string): (now: string) => string {
  return (now) => (now === kept ? '' : now);
}
