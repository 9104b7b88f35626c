import { useEffect, useMemo, useRef } from 'preact/hooks';
import { type EndNote, endScene, type EndView } from '../../telling/endview/index.ts';
import { seenFrom } from '../../telling/narrative/index.ts';
import type { Study, Build } from '../study/index.ts';
import { Drawing, Figure, large, SpeedTable } from '../figure/index.ts';
import { shownOf, standingsFor } from '../diagram/index.ts';
import { stand, voiceNow } from '../words/index.ts';
import { hearDrags } from './handling.ts';
import { rollerOf } from './roller.ts';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly build: Build;
  readonly view: EndView;
}

/** One set from its end; it turns only while it is in sight. */
export function EndFigure({ study, build, view }: Props) {
  const say = words();
  const voice = voiceNow();
  const place = useRef<HTMLDivElement>(null);
  const standings = standingsFor(build, shownOf(build));
  const title = say.of(voice.name(view.name), seenFrom(stand.value, voice));
  // For a class at the other end of the room each wheel has its name.
  const names = large.value !== null && large.value.contains(place.current);
  const scene = useMemo(
    () =>
      endScene(view, build.angles, {
        title,
        names,
        nameOf: (member) => voice.called(member),
        ...(standings && { standings }),
      }),
    [view, build.answer.value, title, names],
  );
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    if (!svg) return undefined;
    const roll = rollerOf(svg, view, build);
    let inSight = false;
    const watch = new IntersectionObserver(([entry]) => {
      inSight = entry?.isIntersecting ?? false;
      if (inSight) roll();
    });
    watch.observe(svg);
    const stop = study.turning.onFrame(() => inSight && roll());
    return () => {
      watch.disconnect();
      stop();
    };
  }, [scene]);
  useEffect(() => {
    const svg = place.current?.querySelector('svg');
    return svg ? hearDrags(svg, study, build, view) : undefined;
  }, [view]);
  const members = [...new Set(view.wheels.map(({ label }) => label))];
  return (
    <Figure
      caption={voice.name(view.name)}
      name={`end-view-${view.name}`}
      scene={scene}
      table={<SpeedTable members={members} speeds={build.answer.value?.speeds} />}
    >
      <div ref={place} class="ends-view">
        <Drawing scene={scene} />
      </div>
      {view.notes.map((note) => (
        <p key={note.note} class="aside">
          {noteText(note)}
        </p>
      ))}
    </Figure>
  );

  function noteText(note: EndNote): string {
    switch (note.note) {
      case 'teeth not counted':
        return say.notCounted(voice.names(note.members));
      case 'planets not counted':
        return say.planetsNotCounted(note.drawn);
      case 'planets left out':
        return say.leftOut(note.counted, note.drawn);
      case 'not evenly spaced':
        return say.notEven(voice.decimal({ num: Math.round(note.degrees * 100), den: 100 }));
      case 'teeth do not fit':
        return say.noFit;
      case 'teeth too fine':
        return say.tooFine;
    }
  }
}
