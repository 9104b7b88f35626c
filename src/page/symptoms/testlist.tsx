import { type Asked } from '../../asking/faults/index.ts';
import { baseText } from '../../engine/sight/index.ts';
import { type Observation } from '../../engine/suspects/index.ts';
import { keyOf, sightText, testName, gearCalled } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Enquiry } from '../enquiry/index.ts';
import { standingOf } from '../enquiry/index.ts';
import { words } from './words.ts';

/** Every test, kind by kind in the order of the trade; the gears are open, the others unfold. */
export function TestList({ enquiry }: { readonly enquiry: Enquiry }) {
  const say = words();
  const voice = voiceNow();
  const { tests = [], observations = [] } = enquiry.found.value ?? {};
  const kinds = new Map<string, Asked[]>();
  for (const asked of tests) {
    const its = kinds.get(asked.test.test);
    if (its) its.push(asked);
    else kinds.set(asked.test.test, [asked]);
  }
  const sorted = [...kinds].toSorted(([a], [b]) => Number(GEARS.has(b)) - Number(GEARS.has(a)));
  const single = sorted.filter(([, its]) => its.length === 1).map(([, its]) => its[0] as Asked);
  return (
    <section class="symptoms-card" aria-labelledby="tests-asked">
      <h2 id="tests-asked">{say.tests}</h2>
      {sorted
        .filter(([, its]) => its.length > 1)
        .map(([kind, its]) => (
          <details key={kind} open={GEARS.has(kind)} class="symptoms-kind">
            <summary>{voice.say('test.kind', { test: keyOf(kind) })}</summary>
            <div class="tiles symptoms-tiles">
              {its.slice(0, MOST).map((asked) => (
                <Tile key={baseText(asked.test)} {...{ enquiry, asked, observations }} />
              ))}
            </div>
          </details>
        ))}
      <div class="tiles symptoms-tiles">
        {single.map((asked) => (
          <Tile key={asked.test.test} {...{ enquiry, asked, observations }} />
        ))}
      </div>
      <div class="row symptoms-ways">
        <LargeButton disabled={!enquiry.canGoBack.value} onPress={() => enquiry.back()}>
          {say.back}
        </LargeButton>
        <LargeButton onPress={() => enquiry.go({ at: 'hands' })}>{say.hands}</LargeButton>
        <LargeButton onPress={() => enquiry.go({ at: 'driver' })}>{say.askDriver}</LargeButton>
        <LargeButton main onPress={() => enquiry.go({ at: 'next' })}>
          {say.next}
        </LargeButton>
      </div>
    </section>
  );
}

const GEARS: ReadonlySet<string> = new Set(['under power', 'coast']);
// Of hand checks the first are the plainest.
const MOST = 60;

const STOPPED = 'symptoms-tile-stopped';
const SEEN = 'symptoms-tile-seen';

interface TileProps {
  readonly enquiry: Enquiry;
  readonly asked: Asked;
  readonly observations: readonly Observation[];
}

function Tile({ enquiry, asked: { test, stop }, observations }: TileProps) {
  const say = words();
  const voice = voiceNow();
  const named = baseText(test);
  const seen = standingOf(named, observations);
  const short =
    GEARS.has(test.test) && 'gear' in test ? gearCalled(test.gear ?? '', voice) : undefined;
  const name = testName(test, voice);
  const skipped = enquiry.skipped.value.includes(named);
  return (
    <button
      type="button"
      class={['large symptoms-tile', stop && STOPPED, seen.length > 0 && SEEN]
        .filter(Boolean)
        .join(' ')}
      onClick={() => enquiry.go({ at: 'test', test: named })}
    >
      <span>{short ?? name}</span>
      {short !== undefined && <span class="unseen">{name.replace(short, '')}</span>}
      {seen.map((one, k) => (
        <small key={k}>
          {sightText(one.sight, voice)}
          {one.sure === 'sure' ? '' : ' ?'}
        </small>
      ))}
      {seen.length === 0 && skipped && <small>{say.skipped}</small>}
      {seen.length === 0 && !skipped && stop && <small>⊘ {say.notNow}</small>}
    </button>
  );
}
