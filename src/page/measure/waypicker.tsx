import { useState } from 'preact/hooks';
import { LargeButton } from '../controls/index.ts';
import type { Measuring } from './measuring.ts';
import { wordOf, words } from './words.ts';

/** By which way it is measured: one button, that opens the others. */
export function WayPicker({ measuring }: { readonly measuring: Measuring }) {
  const say = words();
  const [open, show] = useState(false);
  const [ways, way, at] = [measuring.ways.value, measuring.way.value, measuring.at.value];
  if (!way || !at) return null;
  const name = wordOf(say.ways, way.way);
  if (ways.length < 2) {
    return (
      <p>
        {say.by}: <b>{name}</b>
      </p>
    );
  }
  return (
    <div class="measure-ways">
      <button type="button" class="large" aria-expanded={open} onClick={() => show(!open)}>
        {say.by}: <b>{name}</b> <span aria-hidden="true">▾</span>
      </button>
      {open && (
        <div class="measure-choices">
          {ways.map((its) => (
            <LargeButton
              key={its.way}
              pressed={its === way}
              onPress={() => {
                measuring.go({ ...at, way: its.way });
                show(false);
              }}
            >
              {wordOf(say.ways, its.way)}
            </LargeButton>
          ))}
        </div>
      )}
    </div>
  );
}
