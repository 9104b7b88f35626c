import { voiceNow } from '../words/index.ts';
import type { Study } from '../study/index.ts';
import { useRoving } from '../controls/index.ts';
import './gears.css';

/** The file's gears, range by range, as the selector goes through them. */
export function Gears({ study }: { readonly study: Study }) {
  const train = study.file.train.value;
  const here = new Set(study.gears.value.map(({ gear }) => gear));
  const voice = voiceNow();
  const row = useRoving<HTMLDivElement>();
  if (!train) return null;
  return (
    <div class="gears" {...row}>
      {train.ranges.map((range) => (
        <fieldset key={range.name} class="gears-row">
          <legend>{voice.called(range.name)}</legend>
          {range.gears.map((gear) => (
            <button
              key={gear.name}
              type="button"
              aria-pressed={here.has(gear)}
              onClick={() => study.shift(range, gear)}
            >
              {voice.called(gear.name)}
            </button>
          ))}
        </fieldset>
      ))}
    </div>
  );
}
