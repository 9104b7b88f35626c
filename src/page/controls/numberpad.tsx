import { useState } from 'preact/hooks';
import { LargeButton } from './largebutton.tsx';
import { words } from './words.ts';
import './controls.css';

interface Props {
  /** The id of the question that the number answers. */
  readonly labelledBy: string;
  readonly start?: number | undefined;
  readonly most: number;
  /** What giving no number is called, where none need be given. */
  readonly none?: string | undefined;
  readonly onNumber: (number: number | null) => void;
}

/** A whole number by keys as large as a gloved finger, by the keyboard, or by steps of one. */
export function NumberPad({ labelledBy, start, most, none, onNumber }: Props) {
  const say = words();
  const [typed, type] = useState(start === undefined ? '' : `${start}`);
  const number = Number(typed);
  const isGood = typed !== '' && number >= 1 && number <= most;
  const press = (digit: string) => type(`${typed}${digit}`.replace(/^0+/u, '').slice(0, 6));
  const step = (by: number) => type(`${Math.min(most, Math.max(1, number + by))}`);
  const give = () => isGood && onNumber(number);
  return (
    <div class="number-pad">
      <div class="number-count">
        <LargeButton label={say.less} onPress={() => step(-1)}>
          −
        </LargeButton>
        <input
          aria-labelledby={labelledBy}
          value={typed}
          // The pad below is larger than what a touch screen would lay over it.
          inputMode={matchMedia('(pointer: coarse)').matches ? 'none' : 'numeric'}
          autoComplete="off"
          onInput={({ currentTarget }) => {
            const digits = currentTarget.value.replace(/\D/gu, '').slice(0, 6);
            currentTarget.value = digits;
            type(digits);
          }}
          onKeyDown={(event) => {
            if (event.key === 'Enter') give();
            else if (event.key === 'ArrowUp') step(1);
            else if (event.key === 'ArrowDown') step(-1);
            else return;
            event.preventDefault();
          }}
        />
        <LargeButton label={say.more} onPress={() => step(1)}>
          +
        </LargeButton>
      </div>
      <div class="number-keys">
        {['1', '2', '3', '4', '5', '6', '7', '8', '9'].map((digit) => (
          <LargeButton key={digit} onPress={() => press(digit)}>
            {digit}
          </LargeButton>
        ))}
        <LargeButton label={say.wipe} onPress={() => type(typed.slice(0, -1))}>
          ⌫
        </LargeButton>
        <LargeButton onPress={() => press('0')}>0</LargeButton>
        <LargeButton main disabled={!isGood} onPress={give}>
          {say.next}
        </LargeButton>
      </div>
      {none !== undefined && <LargeButton onPress={() => onNumber(null)}>{none}</LargeButton>}
    </div>
  );
}
