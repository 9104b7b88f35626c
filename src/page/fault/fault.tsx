import { useComputed } from '@preact/signals';
import { everyFault, type Fault, faultText } from '../../engine/faults/index.ts';
import { faultName } from '../../telling/narrative/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

/** What is wrong with the build that stands beside the right one; nothing: it is not shown. */
export function FaultBeside({ study }: { readonly study: Study }) {
  const say = words();
  const known = useComputed<readonly Fault[]>(() => {
    const train = study.file.train.value;
    return train ? everyFault(train) : [];
  });
  const chosen = study.faults.value;
  const put = (place: number, text: string) => {
    const faults = place < chosen.length ? chosen.with(place, text) : [...chosen, text];
    study.spoil(faults.filter((fault) => fault !== ''));
  };
  return (
    <div class="gears-row">
      {[...chosen, ''].slice(0, MOST_FAULTS).map((fault, place) => (
        <select
          key={place}
          aria-label={place === 0 ? say.beside : say.another}
          value={fault}
          onChange={({ currentTarget }) => put(place, currentTarget.value)}
        >
          <option value="">{place === 0 ? say.beside : say.another}</option>
          {known.value.map((one) => (
            <option key={faultText(one)} value={faultText(one)}>
              {faultName(one, voiceNow())}
            </option>
          ))}
        </select>
      ))}
    </div>
  );
}

/** A wrong build to talk about has one thing wrong, or two. */
const MOST_FAULTS = 2;
