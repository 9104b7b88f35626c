import { useEffect, useState } from 'preact/hooks';
import { askUnsigned, type Unsigned as Its } from '../../asking/build/index.ts';
import type { OpenJob } from '../../asking/job/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { FoldedJob } from '../../shop/records/index.ts';
import { unsignedTexts, visible } from '../../telling/narrative/index.ts';
import type { JobDesk } from '../job/index.ts';
import { voiceNow } from '../words/index.ts';
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
  const its = useUnsigned(train, asked);
  const told = [
    ...(typed.length > 0 ? [say.typedOnly(voice.list(typed.map(visible)))] : []),
    ...(its
      ? unsignedTexts(
          { ...its, unread: its.unread.filter((name) => !typed.includes(name)) },
          signed,
          voice,
        )
      : []),
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

// A plan takes its time: the room is there before what is told of it.
function useUnsigned(train: Train | undefined, job: OpenJob | undefined): Its | undefined {
  const [its, tell] = useState<Its>();
  useEffect(() => {
    if (!train || !job) {
      tell(undefined);
      return undefined;
    }
    const wait = setTimeout(() => tell(askUnsigned(train, job)));
    return () => clearTimeout(wait);
    // Of a job whose train is not on the page it is read anew each time.
  }, [train?.name, job]);
  return its;
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
