import { useState } from 'preact/hooks';
import { outputsOf, type Train } from '../../engine/train/index.ts';
import { goingWith, pathOf } from '../../engine/trainfile/index.ts';
import { problemText } from '../../telling/narrative/index.ts';
import { topicText } from '../../telling/questions/index.ts';
import type { Study } from '../study/index.ts';
import { language, voiceNow } from '../words/index.ts';
import { inquireOf, lacksOf } from '../../asking/describe/index.ts';
import { warningsOf } from '../warnings/index.ts';
import { Add } from './add.tsx';
import { MISSED } from './brought.tsx';
import type { Guide } from './guide.ts';
import { type Described, describedIn, entriesIn } from './thing.ts';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly guide: Guide;
  readonly train: Train;
  /** Shows a line of the text. */
  readonly onPlace: (line: number, column: number) => void;
}

/** What is described so far, to be picked and changed; what is missing; what else can be added. */
export function SoFar({ study, guide, train, onPlace }: Props) {
  const say = words();
  const voice = voiceNow();
  const naming = (name: string) => voice.name(name);
  const ends = [
    ['name', train.name],
    ['input', train.input && naming(train.input)],
    [train.others ? 'outputs' : 'output', outputsOf(train).filter(Boolean).map(naming).join(', ')],
  ] as const;
  const figures = entriesIn(train, voice);
  const sections = describedIn(train, say, voice);
  const isEmpty = sections.length + figures.length === 0 && ends.every(([, text]) => text === '');
  return (
    <div class="describe-sofar">
      <h2>{say.soFar}</h2>
      {isEmpty && <p class="aside">{say.nothingYet}</p>}
      {!isEmpty && <Missing guide={guide} train={train} />}
      <ul class="describe-things">
        {ends.map(
          ([topic, text]) =>
            text !== '' && (
              <li key={topic}>
                <button type="button" class="describe-thing" onClick={() => guide.add(topic)}>
                  <b>{text}</b> <span>{topicText({ topic }, language.value)}</span>
                </button>
              </li>
            ),
        )}
      </ul>
      {sections.map(([section, things]) => (
        <section key={section} aria-label={say.sections[section]}>
          <h3>{say.sections[section]}</h3>
          <ul class="describe-things">
            {things.map((told) => (
              <Item
                key={pathOf(told.thing).join('\n')}
                {...{ study, guide, train, onPlace, told }}
              />
            ))}
          </ul>
        </section>
      ))}
      {figures.length > 0 && (
        <section aria-label={say.figures}>
          <h3>{say.figures}</h3>
          <ul class="describe-things">
            {figures.map((told) => (
              <Item
                key={pathOf(told.thing).join('\n')}
                {...{ study, guide, train, onPlace, told }}
              />
            ))}
          </ul>
        </section>
      )}
      {guide.asked.value.ask !== 'nothing' && <Add guide={guide} train={train} />}
    </div>
  );
}

function Item({ study, guide, train, onPlace, told }: Props & { readonly told: Described }) {
  const say = words();
  const [naming, name] = useState<string | undefined>(undefined);
  const { thing } = told;
  const along = goingWith(train, thing).map((one) => one.name);
  const warnings = warningsOf(study).value.filter(({ about, warning }) => {
    if (MISSED.has(warning.problem)) return false;
    if (thing.thing === 'gear') {
      return 'gear' in warning && warning.range === thing.within && warning.gear === thing.name;
    }
    return about.some((one) => one.name === thing.name && one.kind === KINDS[thing.thing]);
  });
  const place = () => {
    const { line, column } = guide.reading.value.place(...pathOf(thing));
    onPlace(line, column);
  };
  return (
    <li>
      <details name="describe-things">
        <summary class="describe-thing">
          <b>{told.name}</b> <span>{told.says}</span>
        </summary>
        {naming === undefined ? (
          <div class="row">
            <button type="button" onClick={() => guide.change(thing) || place()}>
              {say.change}
            </button>
            {thing.thing !== 'entry' && (
              <button type="button" onClick={() => name(thing.name)}>
                {say.rename}
              </button>
            )}
            <button type="button" onClick={() => guide.discard(thing)}>
              {along.length > 0 ? say.removeAll(along.join(', ')) : say.remove}
            </button>
            <button type="button" onClick={place}>
              {say.inText}
            </button>
          </div>
        ) : (
          <form
            class="row"
            onSubmit={(event) => {
              event.preventDefault();
              if (guide.rename(thing, naming.trim())) name(undefined);
            }}
          >
            <input
              class="name-entry"
              aria-label={say.newName}
              value={naming}
              maxLength={80}
              onInput={({ currentTarget }) => name(currentTarget.value)}
            />
            <button type="submit">{say.done}</button>
            <button type="button" onClick={() => name(undefined)}>
              {say.keep}
            </button>
          </form>
        )}
      </details>
      {warnings.map(({ warning }) => (
        <p key={problemText(warning)} class="describe-warning">
          {problemText(warning, voiceNow())}
        </p>
      ))}
    </li>
  );
}

const KINDS = {
  set: 'set',
  'gear pair': 'pair',
  join: 'member',
  device: 'device',
  range: undefined,
  entry: undefined,
} as const;

function Missing({ guide, train }: Pick<Props, 'guide' | 'train'>) {
  const say = words();
  const voice = voiceNow();
  const lacks = lacksOf(train);
  const loose = lacks.flatMap((lack) => (lack.lack === 'loose' ? [lack] : []));
  if (lacks.length === 0) return <p class="aside">{say.complete}</p>;
  return (
    <section aria-label={say.missing}>
      <h3>{say.missing}</h3>
      <ul class="describe-things">
        {lacks.map(
          (lack) =>
            lack.lack !== 'loose' && (
              <li key={lack.lack}>
                <button
                  type="button"
                  class="describe-thing"
                  onClick={() => guide.begin(inquireOf(lack))}
                >
                  <span>{say.lacks[lack.lack]}</span>
                </button>
              </li>
            ),
        )}
      </ul>
      {loose.length > 0 && (
        <>
          <p class="describe-loose">{say.loose}</p>
          <div class="row">
            {loose.map((lack) => (
              <button key={lack.member} type="button" onClick={() => guide.begin(inquireOf(lack))}>
                {voice.name(lack.member)}
              </button>
            ))}
          </div>
        </>
      )}
    </section>
  );
}
