import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { Part, Train } from '../../engine/train/index.ts';
import { heldOnBy, keptOffBy, type Stripping } from '../../shop/strip/index.ts';
import { explodedScenes, type PartState } from '../../telling/exploded/index.ts';
import { Drawing } from '../figure/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

interface Props {
  readonly train: Train;
  readonly stripping: Stripping;
  /** The part on the screen: it is brought into sight. */
  readonly part: Part | undefined;
  readonly onPart: (name: string) => void;
}

/** The parts on their axis, one long row in a frame of its own; a part is shown by touching it. */
export function ExplodedRow({ train, stripping, part, onPart }: Props) {
  const say = words();
  const frame = useRef<HTMLDivElement>(null);
  const voice = voiceNow();
  const name = part?.name;
  const scene = useMemo(() => {
    const states = statesOf(stripping, part);
    const [first] = explodedScenes(train, { voice, width: Infinity, states });
    return first;
  }, [train, voice, [...stripping.off].join('\n'), name]);
  useEffect(() => {
    const group = frame.current?.querySelector<SVGGElement>(
      `[data-name="${CSS.escape(name ?? '')}"]`,
    );
    if (!group || !frame.current) return;
    const [box, its] = [frame.current.getBoundingClientRect(), group.getBoundingClientRect()];
    const left = its.left + its.width / 2 - box.left - box.width / 2;
    frame.current.scrollLeft += left;
  }, [name, scene]);
  if (!scene) return null;
  const touch = ({ target }: Event) => {
    const touched = (target as Element).closest('[data-kind="part"]')?.getAttribute('data-name');
    if (touched) onPart(touched);
  };
  return (
    <figure class="strip-row">
      {/* Keys scroll it; each part has its button in the list below. */}
      <div
        ref={frame}
        class="strip-frame"
        tabIndex={0}
        role="group"
        aria-label={say.row}
        onClick={touch}
      >
        <Drawing scene={scene} />
      </div>
      <figcaption class="aside">{voice.say('drawn.exploded key')}</figcaption>
    </figure>
  );
}

function statesOf(stripping: Stripping, part: Part | undefined): ReadonlyMap<string, PartState> {
  const states = new Map<string, PartState>();
  for (const name of stripping.off) states.set(name, 'off');
  if (!part) return states;
  const refused = [...heldOnBy(stripping, part), ...keptOffBy(stripping, part)].length > 0;
  if (refused) states.set(part.name, 'refused');
  else if (!stripping.off.has(part.name)) states.set(part.name, 'next');
  return states;
}
