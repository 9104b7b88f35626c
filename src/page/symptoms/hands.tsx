import { useSignal } from '@preact/signals';
import { baseText } from '../../engine/sight/index.ts';
import {
  assemble,
  type MemberName,
  setGearing,
  type Train,
  type Way,
} from '../../engine/train/index.ts';
import { testName } from '../../telling/narrative/index.ts';
import { LargeButton, Tiles } from '../controls/index.ts';
import type { Enquiry } from '../enquiry/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

interface Props {
  readonly enquiry: Enquiry;
  readonly train: Train;
}

type Part = 'free' | 'held' | 'turned';
const NEXT: Readonly<Record<Part, Part>> = { free: 'held', held: 'turned', turned: 'free' };

/** A hand check of one's own: any members held, one turned, either way, devices on or off. */
export function Hands({ enquiry, train }: Props) {
  const say = words();
  const voice = voiceNow();
  const parts = useSignal<ReadonlyMap<MemberName, Part>>(new Map());
  const on = useSignal<readonly string[]>([]);
  const way = useSignal<Way>('clockwise');
  const partOf = (name: MemberName) => parts.value.get(name) ?? 'free';
  const press = (name: MemberName) => {
    const its = new Map(parts.value).set(name, NEXT[partOf(name)]);
    // One hand turns: who turned before is held.
    if (its.get(name) === 'turned') {
      for (const [other, part] of its)
        if (other !== name && part === 'turned') its.set(other, 'held');
    }
    parts.value = its;
  };
  const members = bodiesOf(train);
  const turn = members.find((name) => partOf(name) === 'turned');
  const hold = members.filter((name) => partOf(name) === 'held');
  const check = turn && { hold, turn, way: way.value, on: on.value };
  const test = check && ({ test: 'hand check', check } as const);
  return (
    <section class="symptoms-card" aria-labelledby="hands-asked">
      <h2 id="hands-asked">{say.hands}</h2>
      <p class="aside">{say.handsHow}</p>
      <Tiles>
        {members.map((name) => (
          <LargeButton key={name} pressed={partOf(name) !== 'free'} onPress={() => press(name)}>
            {voice.name(name)}
            <small> {say.parts[partOf(name)]}</small>
          </LargeButton>
        ))}
      </Tiles>
      <div class="row" role="group" aria-label={say.way}>
        {(['clockwise', 'anticlockwise'] as const).map((one) => (
          <LargeButton key={one} pressed={way.value === one} onPress={() => (way.value = one)}>
            {voice.say('way', { way: one })}
          </LargeButton>
        ))}
      </div>
      <h3>{say.handsOn}</h3>
      <Tiles>
        {train.devices
          .filter(({ kind }) => kind !== 'one-way')
          .map(({ name }) => (
            <LargeButton
              key={name}
              pressed={on.value.includes(name)}
              onPress={() => {
                const without = on.value.filter((other) => other !== name);
                on.value = without.length < on.value.length ? without : [...on.value, name];
              }}
            >
              {voice.called(name)}
            </LargeButton>
          ))}
      </Tiles>
      <div class="row symptoms-ways">
        <LargeButton disabled={!enquiry.canGoBack.value} onPress={() => enquiry.back()}>
          {say.back}
        </LargeButton>
        <LargeButton
          main
          disabled={!test}
          onPress={() => test && enquiry.go({ at: 'test', test: baseText(test) })}
        >
          {test ? say.handsAsk(testName(test, voice)) : say.handsNone}
        </LargeButton>
      </div>
    </section>
  );
}

// A name for each body that a hand can take, that of what joins it first; no case, and no planets.
function bodiesOf(train: Train): MemberName[] {
  const { bodies, bodyOf } = assemble(train);
  const planets = new Set(
    train.sets.flatMap((set) => setGearing(train, set).planets.map((its) => bodyOf(its.member))),
  );
  const joins = new Set(train.joins.map(({ name }) => name));
  return bodies.flatMap(({ names }, body) => {
    const [name] = [...names.filter((its) => joins.has(its)), ...names];
    return body === 0 || planets.has(body) || name === undefined ? [] : [name];
  });
}
