import { useComputed, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { isApplied } from '../../engine/train/index.ts';
import { leverDiagram, leverScene } from '../../telling/levers/index.ts';
import type { Study, Build } from '../study/index.ts';
import { Drawing, Figure, SpeedTable } from '../figure/index.ts';
import { voiceNow } from '../words/index.ts';
import { dressNodes, type Hold, hearPulls } from './pulling.ts';
import { words } from './words.ts';
import './lever.css';

/**
 * The lever diagram: levers whose nodes stand at their speeds. A node that is pulled takes the
 * others along as far as the train allows, and what stops it is said.
 */
export function Lever({ study, build }: { readonly study: Study; readonly build: Build }) {
  const say = words();
  const voice = voiceNow();
  const place = useRef<HTMLDivElement>(null);
  const hold = useSignal<Hold | undefined>(undefined);
  // On a phone the arms are shorter, so that the names stay large.
  const diagram = useComputed(() => {
    const its = voiceNow();
    const nameOf = (name: string) => its.called(name);
    const width = matchMedia('(max-width: 40rem)').matches ? 400 : 1000;
    return build.train.value && leverDiagram(build.train.value, width, nameOf);
  });
  const answer = build.answer.value;
  const train = build.train.value;
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    return svg ? hearPulls(svg, { study, build, diagram, hold }) : undefined;
  }, [diagram.value]);
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    if (svg) dressNodes(svg, hold.value?.speeds ?? answer?.drawn, (name) => voice.name(name));
  });
  // A gear that is shifted, a hand that is laid on elsewhere: the pull is over.
  useEffect(() => void (hold.value = undefined), [answer]);
  if (!diagram.value || !answer || !train) return null;
  const frictions = new Set(train.devices.filter(isApplied).map(({ name }) => name));
  const scene = leverScene(diagram.value, {
    drawn: hold.value?.speeds ?? answer.drawn,
    speeds: hold.value ? new Map() : answer.speeds,
    on: new Set(study.on.value.filter((name) => frictions.has(name))),
    figure: (speed) => voice.written(speed.toFixed(2)),
    title: say.of(voice.train(train)),
    ...(hold.value && { most: hold.value.most }),
  });
  const members = [...new Set(diagram.value.levers.flat().map(({ member }) => member))];
  return (
    <section class="lever" aria-label={say.title}>
      <h2>{say.title}</h2>
      <Figure
        caption={say.caption}
        name="lever-diagram"
        scene={scene}
        table={<SpeedTable members={members} speeds={answer.speeds} />}
      >
        <div ref={place} class="lever-sheet" role="group" aria-label={say.title} tabIndex={0}>
          <Drawing scene={scene} role="group" />
        </div>
        <p role="status" class="lever-said">
          {hold.value ? said(hold.value) : ''}
        </p>
      </Figure>
    </section>
  );

  function said({ member, stop, speed }: Hold): string {
    if (!stop) return say.pulled(voice.name(member), voice.written(speed.toFixed(2)));
    const { clutches, devices, hands } = stop;
    return say.stops(voice.name(member), voice.names([...clutches, ...devices, ...hands]));
  }
}
