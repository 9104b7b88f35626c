import type { MeasuredThing, MeasuredStanding } from '../../asking/build/index.ts';
import { keyOf, type Voice } from '../../telling/narrative/index.ts';
import { LargeButton, Tiles } from '../controls/index.ts';
import type { Study } from '../study/index.ts';
import { room } from '../rooms/index.ts';
import { voiceNow } from '../words/index.ts';
import { Keeping } from './keeping.tsx';
import type { Measuring } from './measuring.ts';
import { words } from './words.ts';

/** A sign for where a thing stands; its word stands beside it. */
export const SIGNS: Readonly<Record<MeasuredStanding, string>> = {
  nothing: '○',
  asked: '?',
  unjudged: '–',
  outside: '✗',
  inside: '◐',
  closed: '✓',
};

interface Props {
  readonly measuring: Measuring;
  readonly study: Study;
}

/** All that is measured of this unit, and where each stands. */
export function List({ measuring, study }: Props) {
  const say = words();
  const things = measuring.things.value;
  return (
    <>
      <h2 tabIndex={-1}>{things.length > 0 ? say.pick : say.title}</h2>
      <Keeping measuring={measuring} study={study} begins />
      {things.length === 0 && (
        <>
          <p>{say.none}</p>
          <div class="row">
            <LargeButton onPress={() => (room.value = 'describe')}>{say.describe}</LargeButton>
          </div>
        </>
      )}
      <Tiles>
        {things.map((thing) => (
          <LargeButton
            key={`${thing.kind} ${thing.name}`}
            onPress={() => measuring.go({ kind: thing.kind, name: thing.name })}
          >
            <span class={`measure-tile measure-${thing.stands}`}>
              <span class="measure-sign" aria-hidden="true">
                {SIGNS[thing.stands]}
              </span>
              <span>
                <b>{voiceNow().called(thing.name)}</b>
                <br />
                <Kind thing={thing} /> ·{' '}
                {measuring.isPending(thing) ? say.pending : say.stands[thing.stands]}
              </span>
            </span>
          </LargeButton>
        ))}
      </Tiles>
    </>
  );
}

/** Of what kind a thing is: "pack clearance", "planet side clearance". */
export function Kind({ thing }: { readonly thing: MeasuredThing }) {
  const say = words();
  return <>{kindText(thing, say.kinds, voiceNow())}</>;
}

function kindText(
  { kind, judgement }: MeasuredThing,
  kinds: ReturnType<typeof words>['kinds'],
  voice: Voice,
): string {
  if (kind === 'wear') {
    const its = voice.say('wear.kind', { kind: keyOf(judgement.check.measure) });
    return its.charAt(0).toLocaleUpperCase() + its.slice(1);
  }
  const teeth = kind === 'endplay' && judgement.endPlay.measure === 'backlash';
  return kinds[teeth ? 'backlash' : kind];
}
