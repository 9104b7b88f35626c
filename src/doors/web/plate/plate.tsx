import { useComputed } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { Train } from '../../../engine/train/index.ts';
import { type HalfSection, halfSection, paintHalfSection } from '../../../telling/drawing/index.ts';
import type { Bench, Build } from '../bench/index.ts';
import { Drawing } from '../drawing.tsx';
import { Figure } from '../figure.tsx';
import { hearHands } from './hands.ts';
import { dressDials, lightPointed, turnDials } from './dials.ts';
import { shownOf, standingsFor } from './shown.ts';
import { PlateTable } from './table.tsx';
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
 * The half-section that moves: a dial a member, to be turned or held by hand; a device is
 * applied by touching it; what is pointed at elsewhere lights.
 */
export function Plate({ bench, build, caption, children }: Props) {
  const say = words();
  const place = useRef<HTMLDivElement>(null);
  const drawn = useComputed(() => build.train.value && layoutOf(build.train.value));
  const shown = useComputed(() => shownOf(build));
  const standings = standingsFor(build, shown.value);
  const title = say.title(drawn.value?.name ?? '');
  const scene = useMemo(
    () => drawn.value && paintHalfSection(drawn.value, title, standings),
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
    return svg ? hearHands(svg, bench) : undefined;
  }, [drawn.value]);
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
      name="half-section"
      scene={scene}
      table={<PlateTable bench={bench} build={build} />}
      tools={children}
    >
      <div ref={place} class={`plate${locks ? ' plate-locks' : ''}`} tabIndex={-1}>
        <Drawing scene={scene} role="group" />
      </div>
    </Figure>
  );
}

// The first train was laid out when the page was built.
function layoutOf(train: Train): HalfSection {
  return train === firstTrain ? firstDrawn : halfSection(train);
}
