import { useEffect, useState } from 'preact/hooks';
import { unreadIn } from '../../asking/build/index.ts';
import { faultsOf, partsIn } from '../../asking/job/index.ts';
import type { FoldedJob } from '../../shop/records/index.ts';
import { visible } from '../../telling/narrative/index.ts';
import type { JobDesk } from '../job/index.ts';
import { voiceNow } from '../words/index.ts';
import { standingOpen } from './standingopen.ts';
import { words } from './words.ts';

interface Props {
  readonly jobs: JobDesk;
  readonly job: FoldedJob;
  /** Whether it is signed already. */
  readonly signed: boolean;
}

/** All that a signature would stand under, and is not done: it is told, and prevents nothing. */
export function Unsigned({ jobs, job, signed }: Props) {
  const say = words();
  const voice = voiceNow();
  const typed = useTyped(jobs, job);
  const held = jobs.held.value;
  const train = held && jobs.trainOf(held);
  const { value: asked } = jobs.asked;
  const parts = [...partsIn(job, train?.teardown?.map(({ name }) => name) ?? [])];
  const faulty = parts.flatMap(([name, its]) => {
    const faults = faultsOf(its).map(({ says }) => visible(says));
    return faults.length > 0 ? [say.foundTo(voice.called(name), faults.join('; '))] : [];
  });
  const list = (names: readonly string[]) => voice.list(names.map(visible));
  const open = standingOpen(jobs, held);
  const unread = (train && asked ? unreadIn(train, asked) : []).filter(
    (its) => !typed.includes(its),
  );
  const off = parts.flatMap(([name, its]) => (its.off ? [name] : []));
  const told = [
    ...(open.length > 0 ? [say.stands(list(open), signed)] : []),
    ...(typed.length > 0 ? [say.typedOnly(list(typed))] : []),
    ...(faulty.length > 0 ? [say.faulty(voice.list(faulty))] : []),
    ...(off.length > 0 ? [say.off(list(off))] : []),
    ...(unread.length > 0 ? [say.unread(list(unread))] : []),
  ];
  if (told.length === 0) return null;
  return (
    <div role="status">
      {told.map((text) => (
        <p key={text}>{text}</p>
      ))}
    </div>
  );
}

// What the browser has of this job that was typed and not written down.
function useTyped(jobs: JobDesk, job: FoldedJob): readonly string[] {
  const [typed, tell] = useState<readonly string[]>([]);
  const id = jobs.held.value?.job.id;
  useEffect(() => {
    let gone = false;
    void import('../measure/index.ts')
      .then(({ typedOf }) => typedOf(`job ${id}`))
      .then((its) => !gone && tell(its));
    return () => void (gone = true);
  }, [id, job.entries.length]);
  return typed;
}
