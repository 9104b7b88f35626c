import type { ComponentChildren } from 'preact';
import type { JobDesk, Shown } from './jobdesk.ts';
import './job.css';

interface Props {
  readonly jobs: JobDesk;
  readonly shown: Shown;
  /** By the camera, where there is one; else a picture is picked. */
  readonly camera?: boolean;
  readonly children: ComponentChildren;
}

/** Takes a photograph for the open job; what it lacks is told before the camera opens. */
export function TakePhotograph({ jobs, shown, camera, children }: Props) {
  const take = async (input: HTMLInputElement) => {
    const [file] = input.files ?? [];
    if (file) await jobs.photograph(file, shown);
    input.value = '';
  };
  return (
    <label class="job-take">
      {children}
      <input
        type="file"
        accept="image/*"
        {...(camera && { capture: 'environment' })}
        onClick={(event) => !jobs.mayWrite() && event.preventDefault()}
        onChange={({ currentTarget }) => void take(currentTarget)}
      />
    </label>
  );
}
