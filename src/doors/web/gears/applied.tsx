import { isApplied } from '../../../engine/train/index.ts';
import type { Bench } from '../bench/index.ts';
import { words } from './words.ts';

/** Each friction device by itself, to be applied or released. */
export function Applied({ bench }: { readonly bench: Bench }) {
  const say = words();
  const frictions = bench.file.train.value?.devices.filter(isApplied) ?? [];
  if (frictions.length === 0) return null;
  return (
    <fieldset class="gears-row">
      <legend>{say.applied}</legend>
      {frictions.map(({ name }) => (
        <button
          key={name}
          type="button"
          aria-pressed={bench.on.value.includes(name)}
          onClick={() => bench.toggle(name)}
        >
          {name}
        </button>
      ))}
    </fieldset>
  );
}
