import { useState } from 'preact/hooks';
import { voiceOf } from '../../../telling/narrative/index.ts';
import { language } from '../words.ts';
import type { Answer } from './asking.ts';
import { NumberPad } from './numberpad.tsx';
import { optionText, questions } from './questions.ts';
import type { Step } from './steps.ts';
import { words } from './words.ts';

interface Props {
  readonly step: Step;
  /** What the file says now. */
  readonly before: Answer | undefined;
  /** What leaving it empty is called. */
  readonly none: string;
  readonly onAnswer: (said: Answer) => void;
}

/** What a finger in a glove or a key can say to a step. */
export function Control({ step, before, none, onAnswer }: Props) {
  switch (step.kind) {
    case 'text':
      return <Name before={before} onName={onAnswer} />;
    case 'number':
      return (
        <NumberPad before={before} optional={step.optional} most={step.most} onAnswer={onAnswer} />
      );
    case 'pick':
      return <Pick step={step} before={before} onAnswer={onAnswer} />;
    case 'several':
      return <Several step={step} before={before} none={none} onAnswer={onAnswer} />;
    case 'way':
      return <Way step={step} before={before} onAnswer={onAnswer} />;
  }
}

function Name({
  before,
  onName,
}: {
  readonly before?: Answer | undefined;
  readonly onName: (name: string) => void;
}) {
  const say = words();
  const [name, type] = useState(typeof before === 'string' ? before : '');
  const give = () => name.trim() !== '' && onName(name.trim());
  return (
    <div class="describe-row">
      <input
        class="describe-name"
        aria-label={say.itsName}
        value={name}
        maxLength={80}
        autoComplete="off"
        onInput={({ currentTarget }) => type(currentTarget.value)}
        onKeyDown={({ key }) => key === 'Enter' && give()}
      />
      <button type="button" class="describe-next" disabled={name.trim() === ''} onClick={give}>
        {say.next}
      </button>
    </div>
  );
}

/** One of a list; or, where the step is open, a name that is not on it. */
function Pick({ step, before, onAnswer }: Omit<Props, 'none'>) {
  const say = words();
  const optionName = useOptionNames(step);
  const [other, open] = useState(step.open && step.options.length === 0);
  return (
    <>
      <div class="describe-options">
        {step.options.map((option) => (
          <button
            key={option}
            type="button"
            aria-pressed={before === option}
            onClick={() => onAnswer(option)}
          >
            {optionName(option)}
          </button>
        ))}
        {step.open && !other && (
          <button type="button" class="describe-other" onClick={() => open(true)}>
            {step.of === 'members' ? say.another : say.anotherName}…
          </button>
        )}
      </div>
      {other && <Name onName={onAnswer} />}
    </>
  );
}

function Several({ step, before, none, onAnswer }: Props) {
  const say = words();
  const optionName = useOptionNames(step);
  const start = Array.isArray(before) ? (before as readonly string[]) : [];
  const [picked, pick] = useState(start);
  const [other, open] = useState(false);
  const toggle = (name: string) =>
    pick(picked.includes(name) ? picked.filter((one) => one !== name) : [...picked, name]);
  const options = [...new Set([...step.options, ...start, ...picked])];
  return (
    <>
      <div class="describe-options">
        {options.map((option) => (
          <button
            key={option}
            type="button"
            aria-pressed={picked.includes(option)}
            onClick={() => toggle(option)}
          >
            {optionName(option)}
          </button>
        ))}
        {step.open && !other && (
          <button type="button" class="describe-other" onClick={() => open(true)}>
            {say.another}…
          </button>
        )}
      </div>
      {other && (
        <Name
          onName={(name) => {
            if (!picked.includes(name)) toggle(name);
            open(false);
          }}
        />
      )}
      <div class="describe-row">
        <button
          type="button"
          class="describe-next"
          onClick={() => onAnswer(picked)}
          disabled={picked.length === 0 && start.length > 0 && step.of === 'members'}
        >
          {picked.length === 0 ? none : say.next}
        </button>
      </div>
    </>
  );
}

/** The hand test of a one-way clutch, from whichever end it is looked at. */
function Way({ step, before, onAnswer }: Omit<Props, 'none'>) {
  const say = words();
  const ask = questions();
  const [end, look] = useState<'input' | 'output'>('input');
  const seen = (way: string) => (end === 'input' ? way : opposite(way));
  return (
    <>
      <div class="describe-row" role="radiogroup" aria-labelledby="describe-question">
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
      <div class="describe-options describe-ways-round">
        {step.options.map((way) => (
          <button
            key={way}
            type="button"
            aria-pressed={before === seen(way)}
            onClick={() => onAnswer(seen(way))}
          >
            <span aria-hidden="true">{way === 'clockwise' ? '↻' : '↺'}</span>{' '}
            {optionText(ask, 'lets', way)}
          </button>
        ))}
      </div>
    </>
  );
}

function opposite(way: string): string {
  return way === 'clockwise' ? 'anticlockwise' : 'clockwise';
}

function useOptionNames({ of, key }: Step): (option: string) => string {
  const ask = questions();
  if (of === 'names') return (option) => option;
  if (of === 'words') return (option) => optionText(ask, key, option);
  const voice = voiceOf(language.value);
  return (option) => voice.name(option);
}
