import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Train } from '../../engine/train/index.ts';
import type { SceneSubject } from '../../telling/scene/index.ts';
import type { Objection } from '../../telling/narrative/index.ts';
import type { Study } from '../study/index.ts';

/** A warning with what it speaks of on the drawing. */
export interface Warned {
  readonly warning: Objection;
  readonly about: readonly SceneSubject[];
}

const known = new WeakMap<Study, ReadonlySignal<readonly Warned[]>>();

/**
 * The warnings of the file that is open, a moment after it was last changed; none while the
 * text is no train. The code that finds them is fetched when it is first wanted.
 */
export function warningsOf(study: Study): ReadonlySignal<readonly Warned[]> {
  const there = known.get(study);
  if (there) return there;
  const warnings = signal<readonly Warned[]>([]);
  known.set(study, warnings);
  let waits: ReturnType<typeof setTimeout> | undefined;
  effect(() => {
    const text = study.file.text.value;
    const { train } = study.file.reading.value;
    clearTimeout(waits);
    waits = setTimeout(() => {
      void (train ? find(text, train) : Promise.resolve([])).then((found) => {
        if (study.file.text.value === text) warnings.value = found;
      });
    }, QUIET_MS);
  });
  return warnings;
}

// While someone types, no train is asked anything.
const QUIET_MS = 250;

// Asked beside the page: a key that is pressed meanwhile is answered.
async function find(text: string, train: Train): Promise<readonly Warned[]> {
  const [{ beside }, { subjectsOf }] = await Promise.all([
    import('../thread/index.ts'),
    import('./subjects.ts'),
  ]);
  const warnings = await beside('checked', { train: text });
  return warnings.map((warning) => ({ warning, about: subjectsOf(warning, train) }));
}
