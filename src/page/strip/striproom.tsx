import { useSignal } from '@preact/signals';
import { AtJob, JobBar, jobsOf } from '../job/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Study } from '../study/index.ts';
import { Making } from './making.tsx';
import { isHalfMade } from './part.ts';
import { Stripping } from './stripping.tsx';
import { words } from './words.ts';
import './strip.css';

/** A unit stripped part by part; where its file does not say how, the file is made as one goes. */
export function StripRoom({ study }: { readonly study: Study }) {
  const say = words();
  const train = study.file.train.value;
  const work = jobsOf(study).work.value;
  if (!train) return <p>{say.noTrain}</p>;
  return (
    <AtJob study={study}>
      {work !== undefined && <Unit key={work} study={study} train={train} work={work} />}
    </AtJob>
  );
}

interface Props {
  readonly study: Study;
  readonly train: Train;
  readonly work: string;
}

function Unit({ study, train, work }: Props) {
  const adds = useSignal(isHalfMade(work));
  const isTold = (train.teardown ?? []).length > 0;
  return (
    <div class="strip">
      <JobBar study={study} />
      {isTold && !adds.value ? (
        <Stripping {...{ study, train, work }} onAdd={() => (adds.value = true)} />
      ) : (
        <Making {...{ study, train, work }} onDone={() => (adds.value = false)} />
      )}
    </div>
  );
}
