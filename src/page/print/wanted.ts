import { effect, type Signal, signal } from '@preact/signals';
import { type Paper, PAPERS, SHEET_KINDS, type SheetKind } from '../../telling/sheets/index.ts';
import { recalled, remember } from '../words/index.ts';

/** Every sheet that there is for a train, each by itself, and the drawings of the other rooms. */
export const WANTED = ['set', ...SHEET_KINDS, 'pictures'] as const;
type What = SheetKind | 'set' | 'pictures';

/** What somebody wants to print; a reload comes back to it. */
export const what = kept<What>('print what', WANTED, 'strip', ['tab']);
export const paper = kept<Paper>('print paper', PAPERS, 'a4', ['tab', 'browser']);
/** With what stands in the open job, or empty, to be written on. */
export const filling = kept('print filling', ['filled', 'blank'] as const, 'filled', ['tab']);

/** Which drawing, by its id; one that the train has not is the first. */
export const picture = signal(recalled('print picture', ['tab']) ?? '');
effect(() => remember('print picture', picture.value, ['tab']));

/** The load of the torque capacity, as it is typed; '' leaves it to the file. */
export const pressure = signal('');
export const torque = signal('');
export const stallRatio = signal('');

function kept<Word extends string>(
  name: string,
  known: readonly Word[],
  first: Word,
  places: readonly ('tab' | 'browser')[],
): Signal<Word> {
  const last = recalled(name, places);
  const its = signal(known.find((word) => word === last) ?? first);
  effect(() => remember(name, its.value, places));
  return its;
}
