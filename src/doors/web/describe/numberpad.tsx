import { useState } from 'preact/hooks';
import type { Answer } from './asking.ts';
import { words } from './words.ts';

interface Props {
  readonly before: Answer | undefined;
  readonly optional: boolean;
  readonly most: number;
  readonly onAnswer: (said: Answer) => void;
}

/** A number by keys as large as a gloved finger, by the keyboard, or by steps of one. */
export function NumberPad({ before, optional, most, onAnswer }: Props) {
  const say = words();
  const [typed, type] = useState(typeof before === 'number' ? `${before}` : '');
  const number = Number(typed);
  const isGood = typed !== '' && number >= 1 && number <= most;
  const press = (digit: string) => type(`${typed}${digit}`.replace(/^0+/u, '').slice(0, 6));
  const step = (by: number) => type(`${Math.min(most, Math.max(1, number + by))}`);
  const give = () => isGood && onAnswer(number);
  return (
    <div class="describe-number">
      <div class="describe-count">
        <button type="button" aria-label={say.less} onClick={() => step(-1)}>
          −
        </button>
        <input
          aria-labelledby="describe-question"
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
        <button type="button" aria-label={say.more} onClick={() => step(1)}>
          +
        </button>
      </div>
      <div class="describe-pad">
        {['1', '2', '3', '4', '5', '6', '7', '8', '9'].map((digit) => (
          <button key={digit} type="button" onClick={() => press(digit)}>
            {digit}
          </button>
        ))}
        <button type="button" aria-label={say.wipe} onClick={() => type(typed.slice(0, -1))}>
          ⌫
        </button>
        <button type="button" onClick={() => press('0')}>
          0
        </button>
        <button type="button" class="describe-next" disabled={!isGood} onClick={give}>
          {say.next}
        </button>
      </div>
      {optional && (
        <button type="button" onClick={() => onAnswer(null)}>
          {say.notCounted}
        </button>
      )}
    </div>
  );
}
