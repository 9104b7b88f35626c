import { useState } from 'preact/hooks';
import { optionText } from '../../telling/questions/index.ts';
import { language, voiceNow } from '../words/index.ts';
import type { Prompt, Reply } from '../../asking/describe/index.ts';
import { DecimalPad, LargeButton, NameEntry, NumberPad, Tiles } from '../controls/index.ts';
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
    case 'note':
      return (
        <NameEntry
          most={prompt.kind === 'note' ? 200 : 80}
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
          none={prompt.optional ? none : undefined}
          onNumber={onAnswer}
        />
      );
    case 'decimal':
      return (
        <Quantity prompt={prompt} before={before} onAnswer={(said) => onAnswer(Number(said))} />
      );
    case 'quantity':
      return <Quantity prompt={prompt} before={before} onAnswer={onAnswer} />;
    case 'quantities':
      return <Quantities prompt={prompt} before={before} onAnswer={onAnswer} />;
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
          disabled={
            picked.length === 0 &&
            (!prompt.optional || (start.length > 0 && prompt.of === 'members'))
          }
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
            {optionText(prompt, way, language.value)}
          </LargeButton>
        ))}
      </Tiles>
    </>
  );
}

function opposite(way: string): string {
  return way === 'clockwise' ? 'anticlockwise' : 'clockwise';
}

/** A number with its unit; a number alone where it has none. */
function Quantity({ prompt, before, onAnswer }: Omit<Props, 'none'>) {
  const say = words();
  const [unit, pick] = useState(unitOf(prompt, before));
  return (
    <>
      {before !== undefined && (
        <div class="row">
          <LargeButton onPress={() => onAnswer(before)}>{`${before}`}</LargeButton>
        </div>
      )}
      <DecimalPad
        label={say.itsNumber}
        units={prompt.options}
        unit={unit}
        onUnit={pick}
        give={say.next}
        onNumber={(number) => onAnswer(`${number} ${unit}`.trim())}
      />
    </>
  );
}

/** Several of them, one after another. */
function Quantities({ prompt, before, onAnswer }: Omit<Props, 'none'>) {
  const say = words();
  const [unit, pick] = useState(unitOf(prompt, before));
  const [all, tell] = useState(Array.isArray(before) ? (before as readonly string[]) : []);
  return (
    <>
      <Tiles>
        {all.map((size) => (
          <LargeButton
            key={size}
            label={say.taken(size)}
            onPress={() => tell(all.filter((one) => one !== size))}
          >
            {size} ×
          </LargeButton>
        ))}
      </Tiles>
      <DecimalPad
        label={say.itsNumber}
        units={prompt.options}
        unit={unit}
        onUnit={pick}
        give={say.addSize}
        onNumber={(number) => tell([...new Set([...all, `${number} ${unit}`])])}
      />
      <LargeButton main disabled={all.length === 0} onPress={() => onAnswer(all)}>
        {say.next}
      </LargeButton>
    </>
  );
}

// As it was told before; else as most tell it.
function unitOf({ options }: Prompt, before: Reply | undefined): string {
  const [told] = [before ?? ''].flat();
  return options.find((unit) => `${told}`.endsWith(unit)) ?? options[0] ?? '';
}

function useOptionNames(prompt: Prompt): (option: string) => string {
  if (prompt.of === 'names') return (option) => option;
  if (prompt.of === 'words') return (option) => optionText(prompt, option, language.value);
  const voice = voiceNow();
  return (option) => voice.name(option);
}
