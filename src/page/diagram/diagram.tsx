import type { Voice } from '../../telling/narrative/index.ts';
import { useComputed, useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useId, useMemo, useRef } from 'preact/hooks';
import type { Train } from '../../engine/train/index.ts';
import {
  type StickDiagram,
  stickDiagram,
  paintStickDiagram,
} from '../../telling/stickdiagram/index.ts';
import { later } from '../controls/index.ts';
import type { Study, Build } from '../study/index.ts';
import { Drawing, Figure, faultsText } from '../figure/index.ts';
import { Warnings, markWarned, warningsOf } from '../warnings/index.ts';
import { room } from '../rooms/index.ts';
import { dressDials, dressOneWays, lightPointed, turnDials } from './dials.ts';
import { ringWrong, spoiled } from './ring.ts';
import { hearHands } from './hands.ts';
import { widenReach } from './reach.ts';
import { shownOf, standingsFor } from './shown.ts';
import { DiagramTable } from './table.tsx';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';
import { drawn as firstDrawn, train as firstTrain } from 'virtual:first-train';
import './diagram.css';

const Races = later(async () => (await import('./races.tsx')).Races);

interface Props {
  readonly study: Study;
  readonly build: Build;
  readonly caption: string;
  /** What else stands in its caption. */
  readonly children?: ComponentChildren;
}

/**
 * The stick diagram that moves: a dial a member, to be turned or held by hand; a device is
 * applied by touching it; what is pointed at elsewhere lights.
 */
export function Diagram({ study, build, caption, children }: Props) {
  const say = words();
  const place = useRef<HTMLDivElement>(null);
  const drawn = useComputed(() => build.train.value && layoutOf(build.train.value, voiceNow()));
  const shown = useComputed(() => shownOf(build));
  const standings = standingsFor(build, shown.value);
  const name = build.train.value ? voiceNow().train(build.train.value) : '';
  const isWrong = build === study.wrong;
  const title = isWrong ? say.wrongTitle(name, faultsText(study)) : say.title(name);
  const help = useId();
  const enlarged = useSignal(false);
  const warnings = isWrong || room.value === 'ask' ? [] : warningsOf(study).value;
  const scene = useMemo(
    () => drawn.value && paintStickDiagram(drawn.value, title, standings),
    [drawn.value, standings, title],
  );
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    if (!svg) return undefined;
    const dials = dressDials(svg, study, build, say);
    dressOneWays(svg, study, say);
    const stop = study.turning.onFrame(() => turnDials(dials, build));
    return () => void stop();
  });
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    if (!svg) return undefined;
    const [narrow, deaf] = [widenReach(svg), hearHands(svg, study)];
    return () => {
      narrow();
      deaf();
    };
  }, [drawn.value]);
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    return svg ? markWarned(svg, warnings) : undefined;
  }, [scene, warnings]);
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    return svg && isWrong ? ringWrong(svg, spoiled(study)) : undefined;
  }, [scene, study.faults.value]);
  useEffect(() =>
    study.pointed.subscribe((pointed) => {
      const svg = place.current?.querySelector('svg');
      if (svg) lightPointed(svg, pointed);
    }),
  );
  if (!scene) return null;
  const legend = voiceNow().say('marks.picture');
  const inFile = () => {
    if (!drawn.value || !standings) return scene;
    return paintStickDiagram(drawn.value, title, { ...standings, key: [caption, legend] });
  };
  const locks = build.answer.value?.moves === false;
  const looks = [
    'diagram',
    locks && 'diagram-locks',
    scene.width > LONG && 'diagram-long',
    enlarged.value && 'diagram-large',
  ];
  return (
    <Figure
      caption={caption}
      name={isWrong ? 'stick-diagram-wrong' : 'stick-diagram'}
      scene={scene}
      inFile={inFile}
      table={<DiagramTable study={study} build={build} />}
      tools={
        <>
          {children}
          <button
            type="button"
            class="diagram-enlarge"
            aria-pressed={enlarged.value}
            onClick={() => (enlarged.value = !enlarged.value)}
          >
            {say.enlarge}
          </button>
        </>
      }
    >
      <div ref={place} class={looks.filter(Boolean).join(' ')} tabIndex={-1}>
        <Drawing scene={scene} role="group" aria-describedby={help} />
      </div>
      <p id={help} class="aside diagram-help">
        <span class="diagram-hands">{say.help} </span>
        {legend}
      </p>
      {study.lookedInto.value !== undefined && <Races study={study} build={build} />}
      <Warnings warnings={warnings} />
    </Figure>
  );
}

// In sheet units: a longer train is small beside its reasons.
const LONG = 1200;

/**
 * The layout of a train, with names in a voice; the first train's, as its file has them, was made
 * when the page was built.
 */
export function layoutOf(train: Train, voice: Voice): StickDiagram {
  const asMade = train === firstTrain && !train.languages?.[voice.language];
  return asMade ? firstDrawn : stickDiagram(train, (name) => voice.called(name));
}
