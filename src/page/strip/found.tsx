import { useState } from 'preact/hooks';
import { faultsOf, type Found as Finding } from '../../asking/job/index.ts';
import type { Part, Train } from '../../engine/train/index.ts';
import { faultText } from '../../engine/faults/index.ts';
import { faultFrom, findingsOf, isFault, NOTHING_WRONG } from '../../shop/strip/index.ts';
import { countedText, findingText, visible } from '../../telling/narrative/index.ts';
import { LargeButton, NameEntry, Tiles } from '../controls/index.ts';
import { type JobDesk, jobsOf, TakePhotograph } from '../job/index.ts';
import { room } from '../rooms/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { Counting } from './counting.tsx';
import type { Progress } from './progress.ts';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly train: Train;
  readonly part: Part;
  readonly progress: Progress;
}

/** What a part that is off was found to be: each answer is an entry of the job, and a photograph. */
export function Found({ study, train, part, progress }: Props) {
  const say = words();
  const jobs = jobsOf(study);
  const voice = voiceNow();
  const [asked, ask] = useState(progress.typed(part) === '' ? undefined : 'other');
  const standing = progress.standing(part);
  const toggle = (its: 'other' | 'count') => ask(asked === its ? undefined : its);
  const before = `${visible(part.name)}: `;
  const sound = voice.say('strip.sound');
  const found = standing?.found ?? [];
  const faults = standing ? faultsOf(standing) : [];
  const stands = found.find(({ says }) => !isFault(says) && SOUND.has(says));
  // A second press on what stands is none: gloves press twice. What is wrong takes the place of
  // "sound"; "sound" beside what is wrong is not said.
  const write = (its: string) => {
    if (found.some(({ says }) => says === its)) return;
    const told = { kind: 'note', note: `${before}${its}` } as const;
    if (stands && isFault(its)) void jobs.strike(stands.id, say.foundMore, told);
    else void jobs.write(told);
  };
  const photographed = (jobs.open.value?.entries ?? []).some(({ told, struckBy }) => {
    return !struckBy && told?.kind === 'photograph' && told.part === part.name;
  });
  const findings = findingsOf(train, part);
  const answers = [sound, ...findings.map((is) => findingText(is, voice))];
  // How the unit would have run with such a part in it.
  const would = findings.flatMap((is) => {
    const stood = found.some(({ says }) => says === findingText(is, voice));
    const fault = stood ? faultFrom(train, part, is) : undefined;
    return fault ? [{ is, fault }] : [];
  });
  const pack = train.packs?.find(({ device }) => part.carries.includes(device));
  const counted = platesText(part, say);
  if (!jobs.open.value) return <p class="aside">{say.noJob}</p>;
  return (
    <section class="strip-found" aria-label={say.found}>
      <h3>{say.found}</h3>
      <p class="aside">{say.experience}</p>
      <Tiles>
        {[...answers, ...counted].map((its) => (
          <LargeButton
            key={its}
            pressed={found.some(({ says }) => says === its)}
            disabled={its === sound && faults.length > 0}
            onPress={() => write(its)}
          >
            {its}
          </LargeButton>
        ))}
        {counted.length > 0 && (
          <LargeButton other pressed={asked === 'count'} onPress={() => toggle('count')}>
            {say.countedOther}
          </LargeButton>
        )}
        <LargeButton other pressed={asked === 'other'} onPress={() => toggle('other')}>
          {say.other}
        </LargeButton>
        <TakePhotograph jobs={jobs} shown={{ part: part.name }} camera>
          {say.photograph}
        </TakePhotograph>
      </Tiles>
      {asked === 'count' && (
        <Counting
          onCounted={(its) => {
            const { frictions = 0, steels = 0 } = part;
            const same = its.frictions === frictions && its.steels === steels;
            write(same ? (counted[0] ?? '') : countedText(part, its, pack, voice));
            ask(undefined);
          }}
        />
      )}
      {asked === 'other' && (
        <NameEntry
          label={say.other}
          start={progress.typed(part)}
          onTyped={(its) => progress.type(part, its)}
          onName={(its) => {
            write(its);
            progress.type(part, '');
            ask(undefined);
          }}
        />
      )}
      {would.map(({ is, fault }) => (
        <LargeButton
          key={is}
          onPress={() => {
            study.spoil([faultText(fault)]);
            room.value = 'turn';
          }}
        >
          {say.would(findingText(is, voice))}
        </LargeButton>
      ))}
      {(found.length > 0 || photographed) && (
        <p role="status">
          {say.kept}{' '}
          {[
            ...found.map(({ says }) => visible(says)),
            ...(photographed ? [say.photographed] : []),
          ].join('; ')}
          .
        </p>
      )}
      {found.length > 0 && <TakeBack jobs={jobs} found={found} />}
    </section>
  );
}

interface BackProps {
  readonly jobs: JobDesk;
  readonly found: readonly Finding[];
}

// What was written by mistake, or is not so: struck, with which of the two.
function TakeBack({ jobs, found }: BackProps) {
  const say = words();
  const [id, ask] = useState<string | undefined>(undefined);
  return (
    <div class="row strip-back" role="group" aria-label={say.takeBack}>
      {found.map((its) => (
        <LargeButton
          key={its.id}
          other
          pressed={id === its.id}
          onPress={() => ask(id === its.id ? undefined : its.id)}
        >
          {say.strikeIt(visible(its.says))}
        </LargeButton>
      ))}
      {found.some((its) => its.id === id) &&
        say.reasons.map((reason) => (
          <LargeButton key={reason} onPress={() => void jobs.strike(id ?? '', reason)}>
            {reason}
          </LargeButton>
        ))}
    </div>
  );
}

const SOUND: ReadonlySet<string> = new Set(NOTHING_WRONG);

// Plates are counted into the tray.
function platesText({ frictions, steels }: Part, say: ReturnType<typeof words>): string[] {
  if (frictions === undefined && steels === undefined) return [];
  return [say.counted(frictions ?? 0, steels ?? 0)];
}
