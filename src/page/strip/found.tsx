import { useState } from 'preact/hooks';
import type { Part, Train } from '../../engine/train/index.ts';
import { findingsOf, kindOfPart } from '../../shop/strip/index.ts';
import { findingText, visible, voiceOf } from '../../telling/narrative/index.ts';
import { LargeButton, NameEntry, Tiles } from '../controls/index.ts';
import { jobsOf } from '../job/index.ts';
import type { Study } from '../study/index.ts';
import { language } from '../words/index.ts';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly train: Train;
  readonly part: Part;
}

/** What a part that is off was found to be: each answer is an entry of the job, and a photograph. */
export function Found({ study, train, part }: Props) {
  const say = words();
  const jobs = jobsOf(study);
  const voice = voiceOf(language.value);
  const [other, ask] = useState(false);
  const before = `${visible(part.name)}: `;
  const write = (its: string) => void jobs.write({ kind: 'note', note: `${before}${its}` });
  const told = (jobs.open.value?.entries ?? []).flatMap((entry) => {
    if (entry.struckBy) return [];
    const { told: its } = entry;
    if (its?.kind === 'note' && its.note.startsWith(before)) return [its.note.slice(before.length)];
    return its?.kind === 'photograph' && its.part === part.name ? [say.photographed] : [];
  });
  const answers = [
    voice.say('strip.sound'),
    ...findingsOf(kindOfPart(train, part)).map((is) => findingText(is, voice)),
  ];
  const counted = platesText(part, say);
  const take = async (input: HTMLInputElement) => {
    const [file] = input.files ?? [];
    if (file) await jobs.photograph(file, { part: part.name });
    input.value = '';
  };
  if (!jobs.open.value) return <p class="aside">{say.noJob}</p>;
  return (
    <section class="strip-found" aria-label={say.found}>
      <h3>{say.found}</h3>
      <p class="aside">{say.practice}</p>
      <Tiles>
        {[...answers, ...counted].map((its) => (
          <LargeButton key={its} pressed={told.includes(its)} onPress={() => write(its)}>
            {its}
          </LargeButton>
        ))}
        <LargeButton other pressed={other} onPress={() => ask(!other)}>
          {say.other}
        </LargeButton>
        <label class="strip-take">
          {say.photograph}
          <input
            type="file"
            accept="image/*"
            capture="environment"
            onChange={({ currentTarget }) => void take(currentTarget)}
          />
        </label>
      </Tiles>
      {other && (
        <NameEntry
          label={say.other}
          onName={(its) => {
            write(its);
            ask(false);
          }}
        />
      )}
      {told.length > 0 && (
        <p role="status">
          {say.kept} {told.join('; ')}.
        </p>
      )}
    </section>
  );
}

// Plates are counted into the tray; another number is told in own words.
function platesText({ frictions, steels }: Part, say: ReturnType<typeof words>): string[] {
  if (frictions === undefined && steels === undefined) return [];
  return [say.counted(frictions ?? 0, steels ?? 0)];
}
