import { useEffect, useRef, useState } from 'preact/hooks';
import { lastSeen, type Step } from '../../engine/plan/index.ts';
import { mistakeText } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { voiceNow } from '../words/index.ts';
import { LeftOpen } from './leftopen.tsx';
import { TakeBack } from './takeback.tsx';
import type { BodyProps } from './taskprops.ts';
import { words } from './words.ts';

/** A press that comes sooner than this was meant for the screen before; milliseconds. */
const TOO_SOON = 900;

/**
 * The last moment at which some mistakes can be seen: each is looked for, and a press of its own
 * says so. A key that is still down, a second tap and a voice do not pass it.
 */
export function Stop({
  building,
  task,
  context,
  isNext,
  step,
}: BodyProps & { readonly step: Step }) {
  const say = words();
  const { train, plan } = context;
  const place = useRef<HTMLDivElement>(null);
  const begun = useRef(Number.POSITIVE_INFINITY);
  const [found, find] = useState(false);
  useEffect(() => {
    begun.current = performance.now() + TOO_SOON;
    const box = place.current;
    const still = (event: KeyboardEvent) => {
      if (event.repeat && (event.key === 'Enter' || event.key === ' ')) event.preventDefault();
    };
    box?.addEventListener('keydown', still, { capture: true });
    return () => box?.removeEventListener('keydown', still, { capture: true });
  }, []);
  const watched = lastSeen(plan, step);
  const names = watched.map(({ mistake }) => mistakeText(mistake, train, voiceNow()));
  const isCovered = building.isCovered(task);
  const pass = (outcome: 'done' | 'found') => {
    if (performance.now() < begun.current) return;
    void building.answer(task.key, outcome, names.join('; '));
  };
  return (
    <div class="build-stopped" ref={place} role="group" aria-label={say.what.stop}>
      <p class="build-ask">
        <b>{isCovered ? say.wasCovered : say.lookNow}</b>
      </p>
      <ul class="build-names">
        {names.map((name) => (
          <li key={name}>{name}</li>
        ))}
      </ul>
      <LeftOpen building={building} />
      {isNext && (
        <div class="row build-answers">
          <LargeButton onPress={() => pass('done')}>
            {isCovered ? say.wasLooked : say.passStop}
          </LargeButton>
          {isCovered && <LargeButton onPress={() => pass('found')}>{say.nobodyKnows}</LargeButton>}
          <LargeButton pressed={found} onPress={() => find(!found)}>
            {say.foundOne}
          </LargeButton>
        </div>
      )}
      {isNext && found && (
        <TakeBack
          building={building}
          context={context}
          mistakes={watched.map((its) => its.mistake)}
        />
      )}
    </div>
  );
}
