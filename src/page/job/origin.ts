import { effect, type ReadonlySignal, signal } from '@preact/signals';
import { fnv1a } from '../../shop/records/index.ts';
import type { TrainFile } from '../study/index.ts';
import { recalled, remember } from '../words/index.ts';

/**
 * Of which train what is done with no job is kept: by its file's name and its text, as it was when
 * the file was opened. An edit is of the same unit, and a reload after it finds the same again.
 */
export function originOf(file: TrainFile): ReadonlySignal<string> {
  const origin = signal('');
  let opened = -1;
  effect(() => {
    const mark = `${file.name.value} ${fnv1a(file.text.value).toString(36)}`;
    if (file.opened.value !== opened) {
      opened = file.opened.value;
      origin.value = edited().find((its) => its.mark === mark)?.origin ?? mark;
    } else if (mark !== origin.peek()) keepEdited(mark, origin.peek());
  });
  return origin;
}

interface Edited {
  readonly mark: string;
  readonly origin: string;
}

const KEY = 'edited from';
// Of each file the last few: undo and redo lead through them.
const OF_ONE = 4;
const MOST = 60;

function keepEdited(mark: string, origin: string): void {
  const others = edited().filter((its) => its.mark !== mark);
  const same = others.filter((its) => its.origin === origin).slice(0, OF_ONE - 1);
  const all = [{ mark, origin }, ...same, ...others.filter((its) => its.origin !== origin)];
  remember(KEY, JSON.stringify(all.slice(0, MOST)), ['browser']);
}

function edited(): readonly Edited[] {
  try {
    const all = JSON.parse(recalled(KEY, ['browser'])) as unknown;
    return Array.isArray(all) ? (all as Edited[]).filter((its) => its !== null) : [];
  } catch {
    return [];
  }
}
