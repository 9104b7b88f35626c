import { useState } from 'preact/hooks';
import { LargeButton } from './largebutton.tsx';
import { words } from './words.ts';
import './controls.css';

interface Props {
  readonly label: string;
  /** What stands there at first. */
  readonly start?: string;
  /** The most letters that it takes. */
  readonly most?: number;
  /** While it is typed. */
  readonly onTyped?: (name: string) => void;
  readonly onName: (name: string) => void;
}

/** A name or a short text, typed; Enter gives it. */
export function NameEntry({ label, start = '', most = 80, onTyped, onName }: Props) {
  const say = words();
  const [name, type] = useState(start);
  const give = () => name.trim() !== '' && onName(name.trim());
  return (
    <div class="row">
      <input
        class="name-entry"
        aria-label={label}
        value={name}
        maxLength={most}
        autoComplete="off"
        onInput={({ currentTarget }) => {
          type(currentTarget.value);
          onTyped?.(currentTarget.value);
        }}
        onKeyDown={({ key }) => key === 'Enter' && give()}
      />
      <LargeButton main disabled={name.trim() === ''} onPress={give}>
        {say.next}
      </LargeButton>
    </div>
  );
}
