import { useState } from 'preact/hooks';
import { voiceOf } from '../../telling/narrative/index.ts';
import { language } from '../words/index.ts';
import type { Reply } from './asking.ts';
import { LargeButton, NameEntry, NumberPad, Tiles } from '../controls/index.ts';
import { optionText, questions } from './questions.ts';
import type { Prompt } from './prompts.ts';
import { words } from './words.ts';

interface Props {
  readonly prompt: Prompt;
  /** What the file says now. */
  readonly before: Reply | undefined;
  /** What leaving it empty is called. */
  readonly none: string;
  readonly onAnswer: (said: Reply) => void;
}

/** What a finger in a glove or a key can say to a prompt. */
export function Control({ prompt, before, none, onAnswer }: Props) {
  const say = words();
  switch (prompt.kind) {
    case 'text':
      return (
        <NameEntry
          label={say.itsName}
          start={typeof before === 'string' ? before : ''}
          onName={onAnswer}
        />
      );
    case 'number':
      return (
        <NumberPad
          labelledBy="describe-question"
          start={typeof before === 'number' ? before : undefined}
          most={prompt.most}
          none={prompt.optional ? say.notCounted : undefined}
          onNumber={onAnswer}
        />
      );
    case 'pick':
      return <Pick prompt={prompt} before={before} onAnswer={onAnswer} />;
    case 'several':
      return <Several prompt={prompt} before={before} none={none} onAnswer={onAnswer} />;
    case 'way':
      return <Way prompt={prompt} before={before} onAnswer={onAnswer} />;
  }
}

/** One of a list; or, where the prompt is open, a name that is not on it. */
function Pick({ prompt, before, onAnswer }: Omit<Props, 'none'>) {
  const say = words();
  const optionName = useOptionNames(prompt);
  const [other, open] = useState(prompt.open && prompt.options.length === 0);
  return (
    <>
      <Tiles>
        {prompt.options.map((option) => (
          <LargeButton key={option} pressed={before === option} onPress={() => onAnswer(option)}>
            {optionName(option)}
          </LargeButton>
        ))}
        {prompt.open && !other && (
          <LargeButton other onPress={() => open(true)}>
            {prompt.of === 'members' ? say.another : say.anotherName}…
          </LargeButton>
        )}
      </Tiles>
      {other && <NameEntry label={say.itsName} onName={onAnswer} />}
    </>
  );
}

function Several({ prompt, before, none, onAnswer }: Props) {
  const say = words();
  const optionName = useOptionNames(prompt);
  const start = Array.isArray(before) ? (before as readonly string[]) : [];
  const [picked, pick] = useState(start);
  const [other, open] = useState(false);
  const toggle = (name: string) =>
    pick(picked.includes(name) ? picked.filter((one) => one !== name) : [...picked, name]);
  const options = [...new Set([...prompt.options, ...start, ...picked])];
  return (
    <>
      <Tiles>
        {options.map((option) => (
          <LargeButton
            key={option}
            pressed={picked.includes(option)}
            onPress={() => toggle(option)}
          >
            {optionName(option)}
          </LargeButton>
        ))}
        {prompt.open && !other && (
          <LargeButton other onPress={() => open(true)}>
            {say.another}…
          </LargeButton>
        )}
      </Tiles>
      {other && (
        <NameEntry
          label={say.itsName}
          onName={(name) => {
            if (!picked.includes(name)) toggle(name);
            open(false);
          }}
        />
      )}
      <div class="row">
        <LargeButton
          main
          disabled={picked.length === 0 && start.length > 0 && prompt.of === 'members'}
          onPress={() => onAnswer(picked)}
        >
          {picked.length === 0 ? none : say.next}
        </LargeButton>
      </div>
    </>
  );
}

/** The hand test of a one-way clutch, from whichever end it is looked at. */
function Way({ prompt, before, onAnswer }: Omit<Props, 'none'>) {
  const say = words();
  const ask = questions();
  const [end, look] = useState<'input' | 'output'>('input');
  const seen = (way: string) => (end === 'input' ? way : opposite(way));
  return (
    <>
      <div class="row" role="radiogroup" aria-labelledby="describe-question">
        {(['input', 'output'] as const).map((one) => (
          <label key={one} class="describe-radio">
            <input
              type="radio"
              name="describe-end"
              checked={end === one}
              onChange={() => look(one)}
            />
            {one === 'input' ? say.fromInput : say.fromOutput}
          </label>
        ))}
      </div>
      <Tiles>
        {prompt.options.map((way) => (
          <LargeButton key={way} pressed={before === seen(way)} onPress={() => onAnswer(seen(way))}>
            <span aria-hidden="true">{way === 'clockwise' ? '↻' : '↺'}</span>{' '}
            {optionText(ask, 'lets', way)}
          </LargeButton>
        ))}
      </Tiles>
    </>
  );
}

function opposite(way: string): string {
  return way === 'clockwise' ? 'anticlockwise' : 'clockwise';
}

function useOptionNames({ of, key }: Prompt): (option: string) => string {
  const ask = questions();
  if (of === 'names') return (option) => option;
  if (of === 'words') return (option) => optionText(ask, key, option);
  const voice = voiceOf(language.value);
  return (option) => voice.name(option);
}
