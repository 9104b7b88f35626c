import { useSignal, useSignalEffect } from '@preact/signals';
import { NoAnswer } from '../../asking/request/index.ts';
import { refusedText, visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { faultsText } from '../figure/index.ts';
import { JobBar, jobsOf } from '../job/index.ts';
import type { Study } from '../study/index.ts';
import { stand, voiceNow } from '../words/index.ts';
import { Choosing } from './choosing.tsx';
import { madeFor, type Ordered, pictured } from './making.ts';
import { OfPictures } from './ofpictures.tsx';
import { picturesOf } from './pictures.ts';
import { PaperView } from './paper.tsx';
import { filling, paper, picture, pressure, stallRatio, torque, what } from './wanted.ts';
import { words } from './words.ts';
import './print.css';

/** Every sheet of the train and of the open job, seen as it will be printed, and printed. */
export function PrintRoom({ study }: { readonly study: Study }) {
  const say = words();
  const jobs = jobsOf(study);
  const made = useSignal<Ordered | undefined>(undefined);
  const trouble = useSignal<unknown>(undefined);
  const count = useSignal(0);
  useSignalEffect(() => {
    const order = orderOf(study);
    let stale = false;
    trouble.value = undefined;
    if (!order) {
      made.value = undefined;
      return undefined;
    }
    const { what: kind } = order;
    const drawn = kind === 'pictures' ? chosenOf(study)?.draw() : undefined;
    const making =
      kind === 'pictures'
        ? Promise.resolve(drawn && pictured(drawn, order))
        : madeFor({ ...order, what: kind });
    making.then(
      (its) => {
        if (!stale) made.value = its;
      },
      (error: unknown) => {
        if (stale) return;
        made.value = undefined;
        trouble.value = error;
      },
    );
    return () => (stale = true);
  });
  const train = study.file.train.value;
  if (!train) return <p>{say.noTrain}</p>;
  const open = jobs.open.value !== undefined;
  const cardless = what.value === 'job' && !jobIn(study);
  const { printing, notes = [] } = made.value ?? {};
  const faults = study.faults.value.length > 0 && say.faults(faultsText(study));
  return (
    <div class="print-room">
      <div class="print-choose">
        <JobBar study={study} none={say.noJob} />
        <Choosing train={train} job={open}>
          {what.value === 'pictures' && (
            <OfPictures offered={picturesOf(study, train)} chosen={chosenOf(study)?.draw()} />
          )}
        </Choosing>
        {faults && <p>{faults}</p>}
        {notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
        <div class="row print-go">
          <LargeButton main disabled={!printing || cardless} onPress={() => print()}>
            {say.print}
          </LargeButton>
          <p role="status">
            {printing && !cardless && say.pages(count.value)}
            {!printing && trouble.value === undefined && !cardless && say.working}
          </p>
        </div>
        <p class="aside">{say.how}</p>
        {cardless && <p role="alert">{say.noJob}</p>}
        {trouble.value !== undefined && (
          <p role="alert">{troubleText(trouble.value, visible(study.file.name.value))}</p>
        )}
      </div>
      {printing && !cardless && (
        <PaperView
          printing={printing}
          label={say.preview}
          onPages={(pages) => (count.value = pages)}
        />
      )}
    </div>
  );
}

// The drawing that was chosen, or the first.
function chosenOf(study: Study) {
  const train = study.file.train.value;
  const offered = train ? picturesOf(study, train) : [];
  return offered.find(({ id }) => id === picture.value) ?? offered[0];
}

// Without a job every sheet is empty.
function jobIn(study: Study) {
  const { asked } = jobsOf(study);
  return filling.value === 'blank' && what.value !== 'job' ? undefined : asked.value;
}

function orderOf(study: Study) {
  const { file, faults } = study;
  const told = file.train.value;
  const job = jobIn(study);
  if (!told || !file.reading.value.train || (what.value === 'job' && !job)) return undefined;
  const load = {
    ...(pressure.value !== '' && { pressure: pressure.value }),
    ...(torque.value !== '' && { torque: torque.value }),
    ...(stallRatio.value !== '' && { stallRatio: stallRatio.value }),
  };
  return {
    what: what.value,
    text: file.text.value,
    told,
    faults: faults.value,
    job,
    load,
    paper: paper.value,
    voice: voiceNow(),
    stand: stand.value,
  };
}

function troubleText(error: unknown, file: string): string {
  if (error instanceof NoAnswer) return refusedText(error.why, file, voiceNow());
  return error instanceof Error ? error.message : `${error as string}`;
}
