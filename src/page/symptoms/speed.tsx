import { useSignal } from '@preact/signals';
import { LargeButton } from '../controls/index.ts';
import { words } from './words.ts';

/** What the tachometer shows at a road speed, in place of a word. */
export function Speed({ give }: { readonly give: (saw: string) => void }) {
  const say = words();
  const open = useSignal(false);
  const text = useSignal('');
  const locked = useSignal(false);
  if (!open.value) {
    return (
      <LargeButton other onPress={() => (open.value = true)}>
        {say.speed}
      </LargeButton>
    );
  }
  const said = text.value.trim();
  return (
    <div class="row symptoms-speed">
      <input
        class="name-entry"
        aria-label={say.speed}
        placeholder={say.speedHow}
        value={text.value}
        maxLength={60}
        autoComplete="off"
        onInput={({ currentTarget }) => (text.value = currentTarget.value)}
      />
      <LargeButton pressed={locked.value} onPress={() => (locked.value = !locked.value)}>
        {say.locked}
      </LargeButton>
      <LargeButton
        main
        disabled={said === ''}
        onPress={() => give(locked.value ? `${said}, locked` : said)}
      >
        {say.give}
      </LargeButton>
    </div>
  );
}
