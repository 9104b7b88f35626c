import { useEffect, useRef } from 'preact/hooks';
import { LargeButton } from '../controls/index.ts';
import { AtJob } from '../job/index.ts';
import { comeBack, errand } from '../rooms/index.ts';
import type { Study } from '../study/index.ts';
import { LimitEntry } from './limitentry.tsx';
import { List } from './list.tsx';
import { measuringOf } from './measuring.ts';
import { One } from './one.tsx';
import { ShelfEntry } from './shelfentry.tsx';
import { words } from './words.ts';
import './measure.css';

interface Props {
  readonly study: Study;
}

/** What is measured of the unit: all of it, and then one thing at a time. */
export function Measure({ study }: Props) {
  const say = words();
  const measuring = measuringOf(study);
  const place = useRef<HTMLElement>(null);
  const begun = useRef(false);
  const sent = errand.value?.to === 'measure' ? errand.value : undefined;
  const at = measuring.at.value;
  const thing = measuring.thing.value;
  const isLoaded = measuring.notes.isLoaded.value;
  // Who is sent here for one thing is brought to it, once it is known where they were.
  useEffect(() => {
    if (!isLoaded) return;
    const its = measuring.things.value.find(({ kind, name }) => {
      return kind === sent?.kind && name === sent.name;
    });
    if (its) measuring.go({ kind: its.kind, name: its.name });
  }, [sent, isLoaded]);
  // Who goes to a thing, or back, is told where they are.
  useEffect(() => {
    if (begun.current) place.current?.querySelector('h2')?.focus();
    begun.current = true;
  }, [at?.kind, at?.name, at?.side]);
  return (
    <AtJob study={study}>
      <section class="measure" aria-label={say.title} ref={place}>
        {sent && (
          <div class="row">
            <LargeButton main onPress={comeBack}>
              ‹ {sent.from === 'strip' ? say.comeBackStrip : say.comeBack}
            </LargeButton>
          </div>
        )}
        {(!at || !thing) && <List measuring={measuring} study={study} />}
        {at && thing && at.side === 'read' && (
          <One measuring={measuring} study={study} thing={thing} />
        )}
        {at && thing && at.side === 'limits' && (
          <LimitEntry measuring={measuring} study={study} thing={thing} />
        )}
        {at && thing && at.side === 'shelf' && (
          <ShelfEntry measuring={measuring} study={study} thing={thing} />
        )}
      </section>
    </AtJob>
  );
}
