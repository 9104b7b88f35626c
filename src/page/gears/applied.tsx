import { voiceNow } from '../words/index.ts';
import { isApplied } from '../../engine/train/index.ts';
import type { Study } from '../study/index.ts';
import { useRoving } from '../controls/index.ts';
import { words } from './words.ts';

/** Each friction device by itself, to be applied or released. */
export function Applied({ study }: { readonly study: Study }) {
  const say = words();
  const frictions = study.file.train.value?.devices.filter(isApplied) ?? [];
  const row = useRoving<HTMLFieldSetElement>();
  if (frictions.length === 0) return null;
  return (
    <fieldset class="gears-row" {...row}>
      <legend>{say.applied}</legend>
      {frictions.map(({ name }) => (
        <button
          key={name}
          type="button"
          aria-pressed={study.on.value.includes(name)}
          onClick={() => study.toggle(name)}
        >
          {voiceNow().called(name)}
        </button>
      ))}
    </fieldset>
  );
}
