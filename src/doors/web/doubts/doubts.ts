import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Subject } from '../../../telling/scene/index.ts';
import type { Objection } from '../../../telling/narrative/index.ts';
import type { Bench } from '../bench/index.ts';

/** A warning with what it speaks of on the drawing. */
export interface Doubt {
  readonly warning: Objection;
  readonly about: readonly Subject[];
}

const known = new WeakMap<Bench, ReadonlySignal<readonly Doubt[]>>();

/**
 * The warnings of the file on the bench, a moment after it was last changed; none while the
 * text is no train. The code that finds them is fetched when it is first wanted.
 */
export function doubtsOf(bench: Bench): ReadonlySignal<readonly Doubt[]> {
  const there = known.get(bench);
  if (there) return there;
  const doubts = signal<readonly Doubt[]>([]);
  known.set(bench, doubts);
  let waits: ReturnType<typeof setTimeout> | undefined;
  effect(() => {
    const text = bench.file.text.value;
    clearTimeout(waits);
    waits = setTimeout(() => {
      void find(text).then((found) => {
        if (bench.file.text.value === text) doubts.value = found;
      });
    }, QUIET_MS);
  });
  return doubts;
}

// While someone types, no train is asked anything.
const QUIET_MS = 250;

async function find(text: string): Promise<readonly Doubt[]> {
  const [{ readTrain }, { check }, { doubtFigures }, { subjectsOf }] = await Promise.all([
    import('../../../engine/trainfile/index.ts'),
    import('../../../engine/check/index.ts'),
    import('../../../shop/figures/index.ts'),
    import('./subjects.ts'),
  ]);
  const reading = readTrain(text);
  const { train, problems } = reading;
  if (!train) return [];
  const warnings = [
    ...problems.filter(({ severity }) => severity === 'warning'),
    ...check(reading),
    ...doubtFigures(reading),
  ];
  return warnings.map((warning) => ({ warning, about: subjectsOf(warning, train) }));
}
