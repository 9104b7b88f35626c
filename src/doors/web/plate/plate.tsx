import { useComputed } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useId, useMemo, useRef } from 'preact/hooks';
import type { Train } from '../../../engine/train/index.ts';
import {
  type StickDiagram,
  stickDiagram,
  paintStickDiagram,
} from '../../../telling/stickdiagram/index.ts';
import { voiceOf } from '../../../telling/narrative/index.ts';
import type { Bench, Build } from '../bench/index.ts';
import { faultsText } from '../caption.ts';
import { doubtsOf } from '../doubts/index.ts';
import { Drawing } from '../drawing.tsx';
import { Figure } from '../figure.tsx';
import { room } from '../room.ts';
import { dressDials, lightPointed, turnDials } from './dials.ts';
import { markDoubted } from './doubted.ts';
import { hearHands } from './hands.ts';
import { widenReach } from './reach.ts';
import { shownOf, standingsFor } from './shown.ts';
import { PlateTable } from './table.tsx';
import { Warnings } from './warnings.tsx';
import { language } from '../words.ts';
import { words } from './words.ts';
import { drawn as firstDrawn, train as firstTrain } from 'virtual:first-train';
import './plate.css';

interface Props {
  readonly bench: Bench;
  readonly build: Build;
  readonly caption: string;
  /** What else stands in its caption. */
  readonly children?: ComponentChildren;
}

/**
 * The stick diagram that moves: a dial a member, to be turned or held by hand; a device is
 * applied by touching it; what is pointed at elsewhere lights.
 */
export function Plate({ bench, build, caption, children }: Props) {
  const say = words();
  const place = useRef<HTMLDivElement>(null);
  const drawn = useComputed(() => build.train.value && layoutOf(build.train.value));
  const shown = useComputed(() => shownOf(build));
  const standings = standingsFor(build, shown.value);
  const name = drawn.value?.name ?? '';
  const isWrong = build === bench.wrong;
  const title = isWrong ? say.wrongTitle(name, faultsText(bench)) : say.title(name);
  const help = useId();
  const doubts = isWrong || room.value === 'ask' ? [] : doubtsOf(bench).value;
  const scene = useMemo(
    () => drawn.value && paintStickDiagram(drawn.value, title, standings),
    [drawn.value, standings, title],
  );
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    if (!svg) return undefined;
    const dials = dressDials(svg, bench, build, say);
    const stop = bench.turning.onFrame(() => turnDials(dials, build));
    return () => void stop();
  });
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    if (!svg) return undefined;
    widenReach(svg);
    return hearHands(svg, bench);
  }, [drawn.value]);
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    return svg ? markDoubted(svg, doubts) : undefined;
  }, [scene, doubts]);
  useEffect(() =>
    bench.pointed.subscribe((pointed) => {
      const svg = place.current?.querySelector('svg');
      if (svg) lightPointed(svg, pointed);
    }),
  );
  if (!scene) return null;
  const locks = build.answer.value?.moves === false;
  return (
    <Figure
      caption={caption}
      name={isWrong ? 'stick-diagram-wrong' : 'stick-diagram'}
      scene={scene}
      table={<PlateTable bench={bench} build={build} />}
      tools={children}
    >
      <div
        ref={place}
        class={`plate${locks ? ' plate-locks' : ''}${scene.width > LONG ? ' plate-long' : ''}`}
        tabIndex={-1}
      >
        <Drawing scene={scene} role="group" aria-describedby={help} />
      </div>
      <p id={help} class="aside plate-help">
        <span class="plate-hands">{say.help} </span>
        {voiceOf(language.value).say('marks.picture')}
      </p>
      <Warnings doubts={doubts} />
    </Figure>
  );
}

// In sheet units: a longer train is small beside its reasons.
const LONG = 1200;

// The first train was laid out when the page was built.
function layoutOf(train: Train): StickDiagram {
  return train === firstTrain ? firstDrawn : stickDiagram(train);
}
