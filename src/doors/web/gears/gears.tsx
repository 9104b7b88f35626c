import { isFriction } from '../../../engine/train/index.ts';
import { type Bench, SIDES } from '../bench/index.ts';
import { words } from './words.ts';

/** What is applied: the file's gears, each device by itself, and which end turns the train. */
export function Gears({ bench }: { readonly bench: Bench }) {
  const say = words();
  const train = bench.file.train.value;
  const here = new Set(bench.gears.value.map(({ gear }) => gear));
  const setting = bench.setting.value;
  if (!train) return null;
  return (
    <div class="gears">
      {train.ranges.map((range) => (
        <fieldset key={range.name}>
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
      <fieldset>
        <legend>{say.devices}</legend>
        {train.devices.filter(isFriction).map(({ name }) => (
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
      <fieldset>
        <legend>{say.turnedBy}</legend>
        {SIDES.map((side) => (
          <button
            key={side}
            type="button"
            aria-pressed={setting.by === 'engine' && setting.side === side}
            onClick={() => bench.letGo(side)}
          >
            {say[side]}
          </button>
        ))}
      </fieldset>
    </div>
  );
}
