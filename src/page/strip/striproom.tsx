import { useSignal } from '@preact/signals';
import { JobBar } from '../job/index.ts';
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
  const adds = useSignal(isHalfMade(study.file.name.value));
  if (!train) return <p>{say.noTrain}</p>;
  const isTold = (train.teardown ?? []).length > 0;
  return (
    <div class="strip">
      <JobBar study={study} />
      {isTold && !adds.value ? (
        <Stripping study={study} train={train} onAdd={() => (adds.value = true)} />
      ) : (
        <Making study={study} train={train} onDone={() => (adds.value = false)} />
      )}
    </div>
  );
}
