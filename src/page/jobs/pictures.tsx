import { useEffect, useState } from 'preact/hooks';
import { type FoldedJob, standing } from '../../shop/records/index.ts';
import { toldText, visible } from '../../telling/narrative/index.ts';
import { type JobDesk, TakePhotograph } from '../job/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

/** Taking a photograph: by camera, or from a file. */
export function Pictures({ jobs }: { readonly jobs: JobDesk }) {
  const say = words();
  const [part, type] = useState('');
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
          <TakePhotograph
            key={from}
            jobs={jobs}
            shown={part.trim() === '' ? {} : { part: part.trim() }}
            camera={from === 'camera'}
          >
            {say.photograph[from]}
          </TakePhotograph>
        ))}
      </div>
      <p class="aside">{say.stripped}</p>
    </div>
  );
}

/** The photographs of a job, each with what its entry says of it; those too that no entry names. */
export function Gallery({ jobs, job }: { readonly jobs: JobDesk; readonly job: FoldedJob }) {
  const say = words();
  const voice = voiceNow();
  const all = standing(job, 'photograph');
  const named = job.entries.flatMap(({ told }) => (told?.kind === 'photograph' ? [told.name] : []));
  const seen = usePictures(jobs, named.join('\n'));
  const unnamed = [...(seen?.keys() ?? [])].filter((name) => !named.includes(name));
  if (all.length === 0 && unnamed.length === 0) return null;
  return (
    <ul class="jobs-gallery" aria-label={say.photographs}>
      {all.map((entry) => {
        const { name } = entry.told;
        const address = seen?.get(name);
        const text = toldText(entry, voice);
        return (
          <li key={entry.id}>
            {seen && address === undefined && <p>{say.elsewhere(visible(name))}</p>}
            {address !== undefined && <Picture {...{ address, name, text }} />}
            <p class="aside">{text}</p>
          </li>
        );
      })}
      {unnamed.map((name) => (
        <li key={name}>
          <Picture address={seen?.get(name) ?? ''} name={name} text={say.unnamed(visible(name))} />
          <p class="aside">{say.unnamed(visible(name))}</p>
        </li>
      ))}
    </ul>
  );
}

interface PictureProps {
  readonly address: string;
  readonly name: string;
  readonly text: string;
}

function Picture({ address, name, text }: PictureProps) {
  const say = words();
  const [odd, find] = useState(false);
  if (odd) {
    return (
      <p>
        {say.undrawn(visible(name))}{' '}
        <a href={address} download={name}>
          {say.saveIt}
        </a>
      </p>
    );
  }
  return (
    <a href={address} target="_blank" rel="noreferrer">
      <img src={address} alt={text} onError={() => find(true)} />
    </a>
  );
}

// Addresses of the pictures that this browser has, by name; undefined until they are read, and made
// anew when there is another.
function usePictures(jobs: JobDesk, names: string): ReadonlyMap<string, string> | undefined {
  const [seen, see] = useState<ReadonlyMap<string, string>>();
  const id = jobs.held.value?.job.id;
  const pictured = jobs.shelf.pictured.value;
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
  }, [jobs, id, names, pictured]);
  return seen;
}
