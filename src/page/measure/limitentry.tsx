import { useEffect, useRef, useState } from 'preact/hooks';
import type { MeasuredThing } from '../../asking/build/index.ts';
import type { Refused } from '../../asking/request/index.ts';
import type { FileLimit } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import { putLimit } from '../../engine/trainfile/index.ts';
import type { Told } from '../../shop/records/index.ts';
import { boundsOf } from '../../shop/limits/index.ts';
import {
  boundsText,
  limitDoubtedText,
  problemText,
  refusedText,
  type Voice,
} from '../../telling/narrative/index.ts';
import { DecimalPad, LargeButton } from '../controls/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Measuring } from './measuring.ts';
import { Head } from './one.tsx';
import { Readings } from './readings.tsx';
import { limitIn, limitKindsOf, standingIn, unitsOf } from './ways.ts';
import { wordOf, words } from './words.ts';

interface Props {
  readonly measuring: Measuring;
  readonly study: Study;
  readonly thing: MeasuredThing;
}

/** A limit of the unit's own data, with its source and initials: into the train file, or this job. */
export function LimitEntry({ measuring, study, thing }: Props) {
  const say = words();
  const source = measuring.text('source') ?? '';
  const [edited, refuse] = useState(true);
  const [done, tell] = useState(false);
  const voice = voiceNow();
  const [at, way, field] = [measuring.at.value, measuring.way.value, measuring.field.value];
  const { initials, open } = measuring.keeper;
  if (!at || !way || !field) return null;
  const kinds = limitKindsOf(thing);
  const end = (key: 'least' | 'most') => {
    const its = way.fields.find((one) => one.field === key);
    const text = its && standingIn(measuring.typed.value, its)[0]?.text;
    return text === undefined ? {} : { [key]: text };
  };
  const limit: FileLimit = {
    ...end('least'),
    ...end('most'),
    ...(source.trim() !== '' && { source: source.trim() }),
    by: initials.value.trim(),
  };
  const which = way.way;
  const ready = (limit.least ?? limit.most) !== undefined && initials.value.trim() !== '';
  const told = (sure: boolean): Told => {
    const of = kinds.length > 1 ? { which } : {};
    return { kind: 'limit', of: at.name, ...of, limit, ...(sure && { sure: true as const }) };
  };
  const back = () => {
    measuring.forget();
    tell(true);
  };
  const toJob = async (sure: boolean) => {
    if (await measuring.enter(told(sure))) back();
  };
  const toFile = (sure: boolean) => {
    // A torque's limit is the file's alone: a job has none of that kind.
    const asked = sure || field.of === 'torque' || measuring.fits(told(false));
    if (!asked) return;
    const put = putLimit(study.file.text.value, at, which, limit);
    refuse('text' in put);
    if (!('text' in put)) return;
    study.file.write(put.text);
    back();
  };
  return (
    <>
      <Head measuring={measuring} study={study} thing={thing} />
      <p class="aside">{say.whose}</p>
      <div class="measure-one">
        <div class="measure-entry">
          <DecimalPad
            key={field.field}
            label={wordOf(say.fields, field.field)}
            units={unitsOf(field)}
            unit={measuring.unit.value}
            onUnit={(its) => measuring.setUnit(its)}
            give={`${wordOf(say.fields, field.field)}: ${say.set}`}
            onNumber={(its) => measuring.add(its)}
          />
        </div>
        <div class="measure-told">
          {kinds.length > 1 && (
            <div role="group" aria-label={say.ofWhat} class="measure-choices">
              {kinds.map((its) => (
                <LargeButton
                  key={its}
                  pressed={its === which}
                  onPress={() => measuring.go({ ...at, way: its })}
                >
                  {wordOf(say.which, its)}
                </LargeButton>
              ))}
            </div>
          )}
          <SoFar limit={limitIn(thing, which)} torque={field.of === 'torque'} />
          <Readings measuring={measuring} way={way} />
          <label class="measure-text">
            {say.source}
            <input
              value={source}
              maxLength={200}
              onInput={({ currentTarget }) => measuring.setText('source', currentTarget.value)}
            />
          </label>
          {!open.value && (
            <label class="measure-text">
              {say.initials}
              <input
                value={initials.value}
                maxLength={8}
                autoComplete="off"
                onInput={({ currentTarget }) => (initials.value = currentTarget.value.trim())}
              />
            </label>
          )}
          <div class="row">
            <LargeButton main disabled={!ready} onPress={() => toFile(false)}>
              {say.toFile}
            </LargeButton>
            {open.value && field.of === 'length' && (
              <LargeButton disabled={!ready} onPress={() => void toJob(false)}>
                {say.toJob}
              </LargeButton>
            )}
            <LargeButton onPress={() => measuring.go({ kind: at.kind, name: at.name })}>
              {say.readings}
            </LargeButton>
          </div>
          <p role="status">{done && say.kept}</p>
          {!edited && (
            <p class="measure-warning" role="alert">
              {say.notEdited}
            </p>
          )}
          <Doubt
            refused={measuring.refused.value}
            text={(why) =>
              why.refused === 'bad.entry'
                ? mistakeText(why.problem, voice)
                : refusedText(why, study.file.name.value, voice)
            }
            onMeant={open.value ? undefined : () => toFile(true)}
            onMeantInFile={open.value ? () => toFile(true) : undefined}
            onMeantInJob={open.value ? () => void toJob(true) : undefined}
            onWrong={() => measuring.clear()}
          />
        </div>
      </div>
    </>
  );
}

// What the file, or the job in its place, says now.
function SoFar({
  limit,
  torque,
}: {
  readonly limit: FileLimit | undefined;
  readonly torque: boolean;
}) {
  const voice = voiceNow();
  if (!limit) return null;
  const { least = '', most = '', source, by } = limit;
  const text = torque
    ? [least, most, source, by].filter(Boolean).join(' – ')
    : boundsText(boundsOf(limit), voice);
  return <p>{voice.say('pack.limits', { limits: text, each: 'no' })}</p>;
}

interface Doubted {
  readonly refused: Refused | undefined;
  readonly text: (why: Refused) => string;
  readonly onMeant: (() => void) | undefined;
  readonly onMeantInFile: (() => void) | undefined;
  readonly onMeantInJob: (() => void) | undefined;
  readonly onWrong: () => void;
}

function mistakeText(problem: Problem, voice: Voice): string {
  return problem.problem === 'limit doubted'
    ? limitDoubtedText(problem, voice, 'asked')
    : problemText(problem, voice);
}

// A limit far from the file's is asked about; whatever else is wrong with it is only said.
function Doubt({ refused, text, onMeant, onMeantInFile, onMeantInJob, onWrong }: Doubted) {
  const say = words();
  const place = useRef<HTMLDivElement>(null);
  const asked = refused !== undefined;
  useEffect(() => {
    if (asked) place.current?.scrollIntoView({ block: 'nearest' });
  }, [asked]);
  if (!refused) return null;
  const asks = refused.refused === 'bad.entry' && refused.problem.problem === 'limit doubted';
  return (
    <div class="measure-against" role="alert" ref={place}>
      <p>{text(refused)}</p>
      <div class="row">
        {asks && onMeant && <LargeButton onPress={onMeant}>{say.meant}</LargeButton>}
        {asks && onMeantInFile && (
          <LargeButton onPress={onMeantInFile}>
            {say.meant} ({say.toFile})
          </LargeButton>
        )}
        {asks && onMeantInJob && (
          <LargeButton onPress={onMeantInJob}>
            {say.meant} ({say.toJob})
          </LargeButton>
        )}
        <LargeButton onPress={onWrong}>{say.mistyped}</LargeButton>
      </div>
    </div>
  );
}
