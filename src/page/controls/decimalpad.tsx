import { useState } from 'preact/hooks';
import { LargeButton } from './largebutton.tsx';
import { words } from './words.ts';
import './controls.css';

interface Props {
  /** What the number is of. */
  readonly label: string;
  /** What it may be told in; the first alone where there is no choice, '' for no unit. */
  readonly units: readonly string[];
  readonly unit: string;
  readonly onUnit: (unit: string) => void;
  /** While it is typed: '' where nothing stands there. */
  readonly onTyped?: (number: string) => void;
  /** What giving it is called. */
  readonly give: string;
  readonly onNumber: (number: string) => void;
}

/** A number with a point, by large keys or the keyboard; its unit is always in sight. */
export function DecimalPad({ label, units, unit, onUnit, onTyped, give, onNumber }: Props) {
  const say = words();
  const [typed, type] = useState('');
  const isGood = WHOLE.test(typed);
  const put = (next: string) => {
    const text = next.replaceAll(',', '.').replaceAll(/[−–]/gu, '-');
    if (!PART.test(text)) return;
    type(text);
    onTyped?.(WHOLE.test(text) ? text : '');
  };
  const done = () => {
    if (!isGood) return;
    put('');
    onNumber(typed);
  };
  return (
    <div class="number-pad">
      <div class="decimal-shown">
        <input
          aria-label={unit === '' ? label : `${label} (${unit})`}
          value={typed}
          // The pad below is larger than what a touch screen would lay over it.
          inputMode={matchMedia('(pointer: coarse)').matches ? 'none' : 'decimal'}
          autoComplete="off"
          onInput={({ currentTarget }) => {
            put(currentTarget.value);
            if (!PART.test(currentTarget.value.replaceAll(/[−–]/gu, '-').replaceAll(',', '.')))
              currentTarget.value = typed;
          }}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            done();
          }}
        />
        {unit !== '' && <span class="decimal-unit">{unit}</span>}
      </div>
      {typed.startsWith('-') && (
        <p class="decimal-below" role="alert">
          {say.below}
        </p>
      )}
      {units.length > 1 && (
        <div class="decimal-units" role="group" aria-label={say.unit}>
          {units.map((one) => (
            <LargeButton key={one} pressed={one === unit} onPress={() => onUnit(one)}>
              {one}
            </LargeButton>
          ))}
        </div>
      )}
      <div class="number-keys">
        {['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0'].map((key) => (
          <LargeButton
            key={key}
            {...(key === '.' && { label: say.point })}
            onPress={() => put(key === '.' && typed === '' ? '0.' : `${typed}${key}`)}
          >
            {key}
          </LargeButton>
        ))}
        <LargeButton label={say.wipe} onPress={() => put(typed.slice(0, -1))}>
          ⌫
        </LargeButton>
      </div>
      <LargeButton main disabled={!isGood} onPress={done}>
        {give}
      </LargeButton>
    </div>
  );
}

// What quantities may be: seven digits before the point, six behind it, or a fraction of an inch.
const WHOLE = /^(?:\d{1,7}(?:\.\d{1,6})?|(?:\d{1,4} )?\d{1,4}\/[1-9]\d{0,3})$/u;
// A sign is never dropped in silence: it stands there, and is refused.
const PART = /^-?(?:\d{0,7}(?:\.\d{0,6})?|(?:\d{1,4} )?\d{1,4}(?:\/\d{0,4})?|\d{1,4} )$/u;
