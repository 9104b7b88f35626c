import { useEffect, useState } from 'preact/hooks';
import { type FoldedJob, standing } from '../../shop/records/index.ts';
import { toldText, visible, voiceOf } from '../../telling/narrative/index.ts';
import type { JobDesk } from '../job/index.ts';
import { language } from '../words/index.ts';
import { words } from './words.ts';

/** Taking a photograph: by camera, or from a file. */
export function Pictures({ jobs }: { readonly jobs: JobDesk }) {
  const say = words();
  const [part, type] = useState('');
  const take = async (input: HTMLInputElement) => {
    const [file] = input.files ?? [];
    if (file) await jobs.photograph(file, part.trim() === '' ? {} : { part: part.trim() });
    input.value = '';
  };
  return (
    <div class="jobs-pictures">
      <div class="row">
        <label class="job-field">
          {say.photographOf}
          <input
            value={part}
            maxLength={80}
            onInput={({ currentTarget }) => type(currentTarget.value)}
          />
        </label>
        {(['camera', 'file'] as const).map((from) => (
          <label key={from} class="jobs-take">
            {say.photograph[from]}
            <input
              type="file"
              accept="image/*"
              {...(from === 'camera' && { capture: 'environment' })}
              onChange={({ currentTarget }) => void take(currentTarget)}
            />
          </label>
        ))}
      </div>
      <p class="aside">{say.stripped}</p>
    </div>
  );
}

/** The photographs of a job, each with what its entry says of it. */
export function Gallery({ jobs, job }: { readonly jobs: JobDesk; readonly job: FoldedJob }) {
  const say = words();
  const voice = voiceOf(language.value);
  const all = standing(job, 'photograph');
  const seen = usePictures(jobs, all.map(({ told }) => told.name).join('\n'));
  if (all.length === 0) return null;
  return (
    <ul class="jobs-gallery" aria-label={say.photographs}>
      {all.map((entry) => {
        const { name } = entry.told;
        const address = seen?.get(name);
        const text = toldText(entry, voice);
        return (
          <li key={entry.id}>
            {seen && address === undefined && <p>{say.elsewhere(visible(name))}</p>}
            {address !== undefined && (
              <a href={address} target="_blank" rel="noreferrer">
                <img src={address} alt={text} />
              </a>
            )}
            <p class="aside">{text}</p>
          </li>
        );
      })}
    </ul>
  );
}

// Addresses of the pictures that this browser has, by name; undefined until they are read, and made
// anew when there is another.
function usePictures(jobs: JobDesk, names: string): ReadonlyMap<string, string> | undefined {
  const [seen, see] = useState<ReadonlyMap<string, string>>();
  const id = jobs.held.value?.job.id;
  useEffect(() => {
    let made: string[] = [];
    let gone = false;
    void (id === undefined ? Promise.resolve([]) : jobs.shelf.photographs(id)).then((pictures) => {
      if (gone) return;
      const all = pictures.map(({ name, bytes }) => {
        const blob = new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'image/jpeg' });
        return [name, URL.createObjectURL(blob)] as const;
      });
      made = all.map(([, address]) => address);
      see(new Map(all));
    });
    return () => {
      gone = true;
      for (const address of made) URL.revokeObjectURL(address);
    };
  }, [jobs, id, names]);
  return seen;
}
