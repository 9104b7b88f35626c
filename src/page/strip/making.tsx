import { useSignal } from '@preact/signals';
import { type End, type Train, uncarried, upOf } from '../../engine/train/index.ts';
import { visible } from '../../telling/narrative/index.ts';
import { LargeButton, NameEntry, NumberPad, Tiles } from '../controls/index.ts';
import { jobsOf, TakePhotograph } from '../job/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import {
  type Asked,
  type Draft,
  FACINGS,
  keepDraft,
  lastAnswered,
  openQuestion,
  recallDraft,
  withPart,
} from './part.ts';
import { ExplodedRow } from './row.tsx';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly train: Train;
  /** Whose it is, for what is remembered of it. */
  readonly work: string;
  /** What came off is all told. */
  readonly onDone: () => void;
}

/** The teardown made as one goes: what came off, a question a screen, written into the file. */
export function Making({ study, train, work, onDone }: Props) {
  const say = words();
  const jobs = jobsOf(study);
  const draft = useSignal<Draft>(recallDraft(work));
  const trouble = useSignal('');
  const { teardown = [] } = train;
  const asked = openQuestion(train, draft.value);
  const set = (its: Draft) => {
    draft.value = its;
    keepDraft(work, its);
  };
  const answer = (its: Draft[Asked]) => asked && set({ ...draft.value, [asked]: its });
  const back = () => {
    const last = lastAnswered(draft.value);
    if (!last) return;
    const { [last]: _, ...others } = draft.value;
    set(others);
  };
  const write = () => {
    const edited = withPart(study.file.text.value, draft.value);
    trouble.value = 'refused' in edited ? say.refused : '';
    if ('refused' in edited) return;
    study.file.write(edited.text);
    set({});
  };
  const off = new Set<string>();
  const last = teardown.at(-1);
  const lastUp = last && upOf(teardown)(last);
  return (
    <section class="strip-making" aria-labelledby="strip-asked">
      {teardown.length > 0 && (
        <ExplodedRow
          train={train}
          stripping={{ teardown, off }}
          part={teardown.at(-1)}
          onPart={() => undefined}
        />
      )}
      {teardown.length === 0 && Object.keys(draft.value).length === 0 && <p>{say.untold}</p>}
      <h2 id="strip-asked">
        {asked ? say.asks[asked](nameIn(draft.value)) : say.ready(nameIn(draft.value))}
      </h2>
      {asked ? (
        <Question key={asked} asked={asked} train={train} onAnswer={answer} />
      ) : (
        <Ready draft={draft.value} onWrite={write} />
      )}
      {asked === 'name' && teardown.length > 0 && (
        <Turn
          now={draft.value.up ? (draft.value.up as End) : lastUp}
          onTurn={(up) => set({ ...draft.value, up })}
        />
      )}
      {trouble.value !== '' && <p role="alert">{trouble.value}</p>}
      <div class="row">
        {Object.keys(draft.value).length > 0 && (
          <LargeButton onPress={back}>{say.back}</LargeButton>
        )}
        {jobs.open.value && nameIn(draft.value) !== '' && (
          <TakePhotograph jobs={jobs} shown={{ part: String(draft.value.name) }} camera>
            {say.photograph}
          </TakePhotograph>
        )}
        {teardown.length > 0 && Object.keys(draft.value).length === 0 && (
          <LargeButton main onPress={onDone}>
            {say.enough}
          </LargeButton>
        )}
      </div>
    </section>
  );
}

function nameIn(draft: Draft): string {
  return typeof draft.name === 'string' ? visible(draft.name) : '';
}

interface QuestionProps {
  readonly asked: Asked;
  readonly train: Train;
  readonly onAnswer: (its: Draft[Asked]) => void;
}

function Question({ asked, train, onAnswer }: QuestionProps) {
  const say = words();
  const ask = say.asks[asked]('');
  const pick = (choices: readonly string[], named: (choice: string) => string) => (
    <Tiles>
      {choices.map((choice) => (
        <LargeButton key={choice} onPress={() => onAnswer(choice)}>
          {named(choice)}
        </LargeButton>
      ))}
      <LargeButton other onPress={() => onAnswer(null)}>
        {say.skip}
      </LargeButton>
    </Tiles>
  );
  switch (asked) {
    case 'name': {
      const taken = (name: string) => train.teardown?.some((part) => part.name === name);
      return (
        <NameEntry label={ask} onName={(name) => onAnswer(taken(name) ? `${name} 2` : name)} />
      );
    }
    case 'carries':
      return <Carried train={train} onAnswer={onAnswer} />;
    case 'frictions':
    case 'steels':
      return (
        <NumberPad
          labelledBy="strip-asked"
          most={100}
          none={say.skip}
          onNumber={(its) => onAnswer(its)}
        />
      );
    case 'up':
      return pick(['input', 'output'], (its) => say.ends[its as 'input' | 'output']);
    case 'faces':
      return pick(FACINGS, (its) => say.facings[its as (typeof FACINGS)[number]]);
    case 'selective':
      return pick(['yes', 'no'], (its) => say.answers[its as 'yes' | 'no']);
    case 'refit':
      return pick(['reuse', 'replace'], (its) => say.refits[its as 'reuse' | 'replace']);
    case 'inner':
    case 'outer':
    case 'face':
    case 'align':
      return (
        <>
          <NameEntry label={ask} onName={(its) => onAnswer(its)} />
          <LargeButton other onPress={() => onAnswer(null)}>
            {say.skip}
          </LargeButton>
        </>
      );
  }
}

// Several may come with one part.
function Carried({ train, onAnswer }: Omit<QuestionProps, 'asked'>) {
  const say = words();
  const voice = voiceNow();
  const picked = useSignal<readonly string[]>([]);
  const offered = uncarried({ ...train, teardown: train.teardown ?? [] });
  const toggle = (name: string) => {
    const others = picked.value.filter((its) => its !== name);
    picked.value = others.length === picked.value.length ? [...others, name] : others;
  };
  return (
    <>
      <Tiles>
        {offered.map((name) => (
          <LargeButton
            key={name}
            pressed={picked.value.includes(name)}
            onPress={() => toggle(name)}
          >
            {voice.name(name)}
          </LargeButton>
        ))}
      </Tiles>
      <LargeButton main onPress={() => onAnswer(picked.value)}>
        {picked.value.length === 0 ? say.nothing : say.go}
      </LargeButton>
    </>
  );
}

interface TurnProps {
  readonly now: End | undefined;
  readonly onTurn: (up: End) => void;
}

// Between two parts the unit may be turned over: the next came off with the other end up.
function Turn({ now, onTurn }: TurnProps) {
  const say = words();
  const voice = voiceNow();
  const other = now === 'output' ? 'input' : 'output';
  return (
    <>
      {now && <p>{say.isUp(say.ends[now])}</p>}
      <p class="strip-warning">{voice.say('plan.danger', { danger: 'weight' })}</p>
      <LargeButton other onPress={() => onTurn(other)}>
        {say.turned(say.ends[other])}
      </LargeButton>
    </>
  );
}

interface ReadyProps {
  readonly draft: Draft;
  readonly onWrite: () => void;
}

// All that was said of the part, before it is written.
function Ready({ draft, onWrite }: ReadyProps) {
  const say = words();
  const told = Object.entries(draft).flatMap(([asked, its]) => {
    if (its === null || asked === 'name' || (Array.isArray(its) && its.length === 0)) return [];
    const text =
      asked === 'up' ? say.ends[its as End] : Array.isArray(its) ? its.join(', ') : String(its);
    return [`${say.said[asked as Asked]}: ${visible(text)}`];
  });
  return (
    <>
      {told.length > 0 && (
        <ul class="strip-looks">
          {told.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <div class="row">
        <LargeButton main onPress={onWrite}>
          {say.write}
        </LargeButton>
      </div>
    </>
  );
}
