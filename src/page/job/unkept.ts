import { refusedText, visible } from '../../telling/narrative/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Unkept } from './jobdesk.ts';
import { words } from './words.ts';

/** Why something is not kept, and the way out. `train` is what the job's train is called. */
export function unkeptText(unkept: Unkept, train = ''): string {
  const say = words();
  switch (unkept.unkept) {
    case 'failed':
      return say.failed(unkept.why);
    case 'no picture':
      return say.noPicture(visible(unkept.name));
    case 'refused':
      return refusedText(unkept.why, train, voiceNow());
    default:
      return say.unkept[unkept.unkept];
  }
}
