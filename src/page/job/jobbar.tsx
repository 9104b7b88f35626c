import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { room } from '../rooms/index.ts';
import type { Study } from '../study/index.ts';
import { trainNameOf } from './held.ts';
import { type JobDesk, jobsOf } from './jobdesk.ts';
import { KeptHere } from './kepthere.tsx';
import { unkeptText } from './unkept.ts';
import { words } from './words.ts';
import './job.css';

interface Props {
  readonly study: Study;
  /** It stands in the room of the jobs, to which it leads from others. */
  readonly home?: boolean;
  /** It stands where something else folds it. */
  readonly unfolded?: boolean;
  /** What becomes of what is found while no job is open, where the room keeps it itself. */
  readonly none?: string;
}

/**
 * For the head of a room that writes into the job: which one is open, or an offer to begin one; and
 * why the last thing written is not kept.
 */
export function JobBar({ study, home = false, unfolded = home, none }: Props) {
  const say = words();
  const jobs = jobsOf(study);
  const open = jobs.open.value;
  const unkept = jobs.unkept.value;
  return (
    <div class="job-bar">
      {open ? (
        <Unit unit={visible(open.unit)} home={home} />
      ) : (
        jobs.known.value && <NoJob study={study} unfolded={unfolded} text={none ?? say.none} />
      )}
      {open && <Initials jobs={jobs} />}
      {open && !home && <KeptHere />}
      <OtherTrain study={study} />
      <p class="job-unkept" role="alert">
        {unkept && unkeptText(unkept, study.file.name.value)}
      </p>
    </div>
  );
}

interface NoJobProps {
  readonly study: Study;
  readonly unfolded: boolean;
  readonly text: string;
}

// One line and one button in a room whose own work is another; what is asked comes with the press.
function NoJob({ study, unfolded, text }: NoJobProps) {
  const say = words();
  const [isOpen, show] = useState(unfolded);
  return (
    <>
      <div class={unfolded ? 'job-none' : 'job-none job-line'}>
        <p>{text}</p>
        {!unfolded && (
          <button type="button" class="large" aria-expanded={isOpen} onClick={() => show(!isOpen)}>
            {say.beginHere}
          </button>
        )}
      </div>
      {isOpen && <Begin study={study} complaint={unfolded} />}
    </>
  );
}

function Unit({ unit, home }: { readonly unit: string; readonly home: boolean }) {
  if (home) return <h2 class="job-unit">{unit}</h2>;
  return (
    <button type="button" class="job-unit" onClick={() => (room.value = 'job')}>
      {words().of(unit)}
    </button>
  );
}

interface BeginProps {
  readonly study: Study;
  /** Whether the driver's words are asked for, too. */
  readonly complaint?: boolean;
  readonly onBegun?: () => void;
}

/** Opens a job for the train on the page, by one press where the initials are known. */
export function Begin({ study, complaint, onBegun }: BeginProps) {
  const say = words();
  const jobs = jobsOf(study);
  const { file } = study;
  const [unit, name] = useState(file.train.value?.name ?? '');
  const [told, tell] = useState('');
  const train = file.train.value && { called: file.name.value, text: file.text.value };
  const begin = async () => {
    await jobs.begin({ unit: unit.trim(), complaint: told.trim(), train });
    if (jobs.unkept.value?.unkept !== 'no initials') onBegun?.();
  };
  return (
    <div class="row">
      <label class="job-field">
        {say.unit}
        <input value={unit} maxLength={80} onInput={(event) => name(event.currentTarget.value)} />
      </label>
      {complaint && (
        <label class="job-field">
          {say.complaint}
          <input
            value={told}
            maxLength={400}
            onInput={(event) => tell(event.currentTarget.value)}
          />
        </label>
      )}
      <Initials jobs={jobs} />
      <LargeButton main onPress={() => void begin()}>
        {say.begin}
      </LargeButton>
    </div>
  );
}

/** Whose hand writes. */
function Initials({ jobs }: { readonly jobs: JobDesk }) {
  return (
    <label class="job-field job-initials">
      {words().initials}
      <input
        value={jobs.initials.value}
        maxLength={8}
        autoComplete="off"
        onInput={({ currentTarget }) => (jobs.initials.value = currentTarget.value.trim())}
      />
    </label>
  );
}

/** What is found on the page would stand in the job of another unit: its own train is a press away. */
function OtherTrain({ study }: { readonly study: Study }) {
  const say = words();
  const jobs = jobsOf(study);
  const held = jobs.held.value;
  const file = held && trainNameOf(held);
  if (file === undefined || jobs.train.isHere.value) return null;
  const isNamed = jobs.train.stands.value === 'another text';
  return (
    <div class="job-other" role="alert">
      <p>
        {isNamed ? say.anotherText(visible(file)) : say.otherTrain(visible(file))}{' '}
        {!isNamed && !jobs.train.isAtHand.value && say.trainGone(visible(file))}
      </p>
      <div class="row">
        {jobs.train.isAtHand.value && (
          <LargeButton main onPress={() => void jobs.train.bring()}>
            {say.takeTrain}
          </LargeButton>
        )}
        {isNamed && <LargeButton onPress={() => void jobs.train.take()}>{say.isIts}</LargeButton>}
        <LargeButton onPress={() => jobs.take('')}>{say.putAway}</LargeButton>
      </div>
    </div>
  );
}

/**
 * A room that judges and writes by the train: while the open job's own is not on the page, only the
 * way to it is shown.
 */
export function AtJob({
  study,
  children,
}: {
  readonly study: Study;
  readonly children: ComponentChildren;
}) {
  const jobs = jobsOf(study);
  if (!jobs.known.value) return null;
  if (!jobs.train.isHere.value) return <JobBar study={study} />;
  return <>{children}</>;
}
