import { voiceNow } from '../words/index.ts';
import type { Part } from '../../engine/train/index.ts';
import { standing } from '../../shop/records/index.ts';
import { visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { jobsOf } from '../job/index.ts';
import { measuringOf } from '../measure/index.ts';
import { send } from '../rooms/index.ts';
import type { Study } from '../study/index.ts';
import { words } from './words.ts';

/** Of a part that comes in several sizes: which was chosen, and the way to its measure. */
export function Selective({ study, part }: { readonly study: Study; readonly part: Part }) {
  const say = words();
  const { sets } = part;
  if (!part.selective || sets === undefined) return null;
  const { value: job } = jobsOf(study).open;
  const chosen = job && standing(job, 'chosen').findLast(({ told }) => told.of === sets);
  const kind = measuringOf(study).things.value.find(({ name }) => name === sets)?.kind ?? '';
  const go = () => send({ to: 'measure', from: 'strip', kind, name: sets });
  return (
    <div class="row">
      <p>
        {chosen ? say.chosen(visible(chosen.told.part)) : say.unchosen(voiceNow().called(sets))}
      </p>
      <LargeButton onPress={go}>{say.measure}</LargeButton>
    </div>
  );
}
