import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Study } from '../study/index.ts';
import { LimitEntry } from './limitentry.tsx';
import { List } from './list.tsx';
import { type Keeper, Measuring } from './measuring.ts';
import { One } from './one.tsx';
import { ShelfEntry } from './shelfentry.tsx';
import { words } from './words.ts';
import './measure.css';

interface Props {
  readonly study: Study;
  /** Absent: no job can be open. */
  readonly keeper?: Keeper;
}

/** What is measured of the unit: all of it, and then one thing at a time. */
export function Measure({ study, keeper }: Props) {
  const say = words();
  const measuring = measuringOf(study, keeper);
  const place = useRef<HTMLElement>(null);
  const begun = useRef(false);
  const at = measuring.at.value;
  const thing = measuring.thing.value;
  // Who goes to a thing, or back, is told where they are.
  useEffect(() => {
    if (begun.current) place.current?.querySelector('h2')?.focus();
    begun.current = true;
  }, [at?.kind, at?.name, at?.side]);
  return (
    <section class="measure" aria-label={say.title} ref={place}>
      {(!at || !thing) && <List measuring={measuring} />}
      {at && thing && at.side === 'read' && <One measuring={measuring} thing={thing} />}
      {at && thing && at.side === 'limits' && (
        <LimitEntry measuring={measuring} study={study} thing={thing} />
      )}
      {at && thing && at.side === 'shelf' && (
        <ShelfEntry measuring={measuring} study={study} thing={thing} />
      )}
    </section>
  );
}

// One for the page: a room that is left and entered again is where it was.
function measuringOf(study: Study, keeper: Keeper = nobody()): Measuring {
  const its = known.get(study) ?? new Measuring(study, keeper);
  known.set(study, its);
  return its;
}

function nobody(): Keeper {
  const nothing = async () => undefined;
  return { open: signal(undefined), initials: signal(''), write: nothing, strike: nothing };
}

const known = new WeakMap<Study, Measuring>();
