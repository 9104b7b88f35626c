import { isFriction } from '../../../engine/train/index.ts';
import type { Bench } from '../bench/index.ts';
import { words } from './words.ts';
import './gears.css';

/** What is applied: the file's gears, and each device by itself. */
export function Gears({ bench }: { readonly bench: Bench }) {
  const say = words();
  const train = bench.file.train.value;
  const here = new Set(bench.gears.value.map(({ gear }) => gear));
  if (!train) return null;
  const frictions = train.devices.filter(isFriction);
  return (
    <div class="gears">
      {train.ranges.map((range) => (
        <fieldset key={range.name} class="gears-row">
          <legend>{range.name}</legend>
          {range.gears.map((gear) => (
            <button
              key={gear.name}
              type="button"
              aria-pressed={here.has(gear)}
              onClick={() => bench.shift(range, gear)}
            >
              {gear.name}
            </button>
          ))}
        </fieldset>
      ))}
      {frictions.length > 0 && (
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
      )}
    </div>
  );
}
