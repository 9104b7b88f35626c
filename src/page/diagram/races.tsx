import { useEffect, useMemo, useRef } from 'preact/hooks';
import { CASE, type OneWayClutch } from '../../engine/train/index.ts';
import { freeWay, hasRollers, jammingScene } from '../../telling/endview/index.ts';
import { seenFrom as seenFromText } from '../../telling/narrative/index.ts';
import { placement } from '../../telling/scene/index.ts';
import { Drawing } from '../figure/index.ts';
import type { Build, Study } from '../study/index.ts';
import { seenFrom, stand, voiceNow } from '../words/index.ts';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly build: Build;
}

/** The one-way clutch that was tapped, from its end: how it holds and how it over-runs, both moving. */
export function Races({ study, build }: Props) {
  const say = words();
  const voice = voiceNow();
  const place = useRef<HTMLElement>(null);
  // It opens below the picture: whoever tapped there must see that it did.
  useEffect(() => {
    place.current?.scrollIntoView({ block: 'nearest' });
  }, [study.lookedInto.value]);
  const device = build.train.value?.devices.find(({ name }) => name === study.lookedInto.value);
  if (device?.kind !== 'one-way') return null;
  const state = build.answer.value?.devices.get(device.name)?.state;
  const seen = seenFromText(stand.value, voice);
  const told = say.jams({
    seen: seen.charAt(0).toUpperCase() + seen.slice(1),
    inner: voice.name(device.first),
    outer: voice.name(device.second),
    free: freeWay(device, seenFrom.value),
    rolls: hasRollers(device),
  });
  return (
    <section ref={place} class="races" aria-label={say.races(device.name)}>
      {([true, false] as const).map((holds) => (
        <Race
          key={`${device.name} ${holds} ${seenFrom.value}`}
          study={study}
          build={build}
          device={device}
          holds={holds}
          isNow={state === (holds ? 'holding' : 'over-running')}
        />
      ))}
      <p class="aside">
        {told}{' '}
        <button type="button" onClick={() => study.lookInto(device.name)}>
          {say.close}
        </button>
      </p>
    </section>
  );
}

interface RaceProps extends Props {
  readonly device: OneWayClutch;
  readonly holds: boolean;
  readonly isNow: boolean;
}

function Race({ study, build, device, holds, isNow }: RaceProps) {
  const say = words();
  const place = useRef<HTMLDivElement>(null);
  const caption = say[holds ? 'holds' : 'over-runs'];
  const scene = useMemo(() => {
    const title = `${say.races(device.name)}: ${caption}`;
    return jammingScene(device, { holds, seenFrom: seenFrom.value, title });
  }, [device, caption]);
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    if (!svg) return undefined;
    const [inner, outer] = [svg.querySelector('.races-inner'), svg.querySelector('.races-outer')];
    const turned = study.turned.value ?? build.train.value?.input ?? '';
    let [gone, before] = [0, build.angles.get(turned) ?? 0];
    return study.turning.onFrame(() => {
      const now = build.angles.get(turned) ?? 0;
      gone += Math.abs(now - before);
      before = now;
      const [first, second] = racesAt(device, holds, gone);
      const side = seenFrom.value === 'input' ? 1 : -1;
      inner?.setAttribute(
        'transform',
        placement({ x: 100, y: 100, degrees: (side * first) % 360 }),
      );
      outer?.setAttribute(
        'transform',
        placement({ x: 100, y: 100, degrees: (side * second) % 360 }),
      );
    });
  }, [scene]);
  return (
    <figure class={`races-one${holds ? ' races-hold' : ''}${isNow ? ' races-now' : ''}`}>
      <div ref={place}>
        <Drawing scene={scene} />
      </div>
      <figcaption>
        {caption}
        {isNow && ` (${say.now})`}
      </figcaption>
    </figure>
  );
}

// Where the races are, once what is turned has gone so far: holding, together, and still where one of
// them is the case; over-running, the one that can turn goes its way past the other.
function racesAt(
  { first, second, lets }: OneWayClutch,
  holds: boolean,
  gone: number,
): [number, number] {
  const free = lets === 'clockwise' ? gone : -gone;
  if (holds) return first === CASE || second === CASE ? [0, 0] : [-free, -free];
  return first === CASE ? [0, -free] : [free, 0];
}
