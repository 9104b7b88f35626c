import { useSignal, useSignalEffect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { FaultsReport } from '../../asking/faults/index.ts';
import { type FaultRow, faultText } from '../../engine/faults/index.ts';
import { faultsCsv } from '../../telling/data/index.ts';
import { faultName, gearName } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { download } from '../desk/index.ts';
import { Builds } from '../fault/index.ts';
import type { Study } from '../study/index.ts';
import { beside } from '../thread/index.ts';
import { isCalm, stand, voiceNow } from '../words/index.ts';
import { Pairs } from './pairs.tsx';
import { Rows } from './rows.tsx';
import type { Touched } from './touched.ts';
import { words } from './words.ts';
import './matrix.css';

/** Every fault against every gear, worked out when it is unfolded. */
export function Matrix({ study }: { readonly study: Study }) {
  const say = words();
  const open = useSignal(false);
  return (
    <details class="matrix" onToggle={({ currentTarget }) => (open.value = currentTarget.open)}>
      <summary>
        <h2>{say.title}</h2>
      </summary>
      {open.value && <WorkedOut study={study} />}
    </details>
  );
}

function WorkedOut({ study }: { readonly study: Study }) {
  const say = words();
  const report = useSignal<FaultsReport | undefined>(undefined);
  const trouble = useSignal<string | undefined>(undefined);
  const touched = useSignal<Touched | undefined>(undefined);
  useSignalEffect(() => {
    const { file } = study;
    let stale = false;
    touched.value = undefined;
    if (!file.reading.value.train) return undefined;
    beside('faults', { train: file.text.value }).then(
      (its) => {
        if (!stale) report.value = its;
      },
      (error: unknown) => {
        if (!stale) trouble.value = error instanceof Error ? error.message : `${error as string}`;
      },
    );
    return () => (stale = true);
  });
  const voice = voiceNow();
  if (trouble.value !== undefined) {
    return (
      <p role="alert">
        {say.fell} {trouble.value}
      </p>
    );
  }
  if (!report.value) return <p role="status">{say.working}</p>;
  const { matrix } = report.value;
  if (matrix.gears.length === 0) return <p>{say.none}</p>;
  const touch = (its: Touched) => {
    touched.value = its;
    show(study, its);
  };
  const legend = voice.say('faults.legend', {
    tied: voice.say('faults.cell', { state: 'tied_up' }),
    slips: voice.say('faults.cell', { state: 'slips' }),
  });
  return (
    <>
      <p>{say.how}</p>
      <p class="aside">{legend}</p>
      <div class="row">
        <LargeButton onPress={() => download(...csvOf(report.value as FaultsReport))}>
          {say.csv}
        </LargeButton>
      </div>
      {touched.value && (
        <Shown study={study} touched={touched.value} close={() => (touched.value = undefined)} />
      )}
      <div class="matrix-frame" tabIndex={0} role="group" aria-label={say.title}>
        <Rows matrix={matrix} touched={touched.value} touch={touch} />
      </div>
      <Pairs train={study.file.text.value} matrix={matrix} touched={touched.value} touch={touch} />
    </>
  );
}

function Shown({
  study,
  touched: { row, gear },
  close,
}: {
  readonly study: Study;
  readonly touched: Touched;
  readonly close: () => void;
}) {
  const say = words();
  const head = useRef<HTMLHeadingElement>(null);
  const named = say.shown(namesOf(row), gearName(gear, voiceNow()));
  useEffect(() => {
    head.current?.focus({ preventScroll: true });
    head.current?.scrollIntoView({ block: 'nearest' });
  }, [named]);
  useEffect(() => () => study.spoil([]), [study]);
  return (
    <section class="matrix-shown">
      <div class="row matrix-shown-head">
        <h3 ref={head} tabIndex={-1}>
          {named}
        </h3>
        <LargeButton onPress={close}>{say.close}</LargeButton>
      </div>
      <Builds study={study} />
    </section>
  );
}

// As the command's faults --csv, from the end that is looked from; the name on disk is the train's.
function csvOf(report: FaultsReport): [string, Blob] {
  const text = faultsCsv(report, { voice: voiceNow(), stand: stand.value });
  return [`${report.train.name ?? 'train'} faults.csv`, new Blob([text], { type: 'text/csv' })];
}

function namesOf({ faults }: FaultRow): string {
  return faults.map((fault) => faultName(fault, voiceNow())).join(' + ');
}

// On coast where that alone is wrong.
function show(study: Study, { row, gear, cell }: Touched): void {
  study.spoil(row.faults.map(faultText));
  const coast = cell.drive.is === 'same' && cell.coast.is !== 'same';
  study.run(gear.on, coast ? 'coast' : 'drive');
  study.turning.runs.value = !isCalm();
}
