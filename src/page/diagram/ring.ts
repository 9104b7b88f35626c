import { type Fault, faultNamed } from '../../engine/faults/index.ts';
import type { SceneSubject } from '../../telling/scene/index.ts';
import type { Study } from '../study/index.ts';

/** What is wrong with the wrong build, as the drawing knows it. */
export function spoiled(study: Study): SceneSubject[] {
  const train = study.file.train.value;
  const { bodies, bodyOf } = study.right.assembly.value ?? {};
  return study.faults.value.flatMap((text) => {
    const named = train && faultNamed(text, train);
    if (!named || !('fault' in named)) return [];
    const about = subjectOf(named.fault);
    if (about?.kind !== 'member') return about ?? [];
    // A planet is drawn in its set.
    const label = bodies?.[bodyOf?.(about.name) ?? 0]?.label;
    const set = train?.sets.find(({ name }) => about.name.startsWith(`${name}.`));
    return [
      { ...about, name: label ?? about.name },
      ...(set ? [{ kind: 'set' as const, name: set.name }] : []),
    ];
  });
}

function subjectOf(fault: Fault): SceneSubject | undefined {
  switch (fault.what) {
    case 'device':
    case 'one-way':
      return { kind: 'device', name: fault.device };
    case 'join':
      return { kind: 'member', name: fault.join };
    case 'member':
    case 'wheel':
    case 'planet':
      return { kind: 'member', name: fault.member };
    case 'pair':
      return { kind: 'pair', name: fault.pair };
    case 'set':
      return { kind: 'set', name: fault.set };
    case 'part':
    case 'oil':
      return undefined;
  }
}

/** Rings the first of these that is drawn; the returned function takes the ring away. */
export function ringWrong(svg: SVGSVGElement, subjects: readonly SceneSubject[]): () => void {
  const rings = subjects.flatMap(({ kind, name }) => {
    const its = `[data-kind="${kind}"][data-name="${CSS.escape(name)}"]`;
    const [mark] = svg.querySelectorAll<SVGGraphicsElement>(its);
    if (!mark) return [];
    const { x, y, width, height } = mark.getBBox();
    const ring = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
    ring.setAttribute('class', 'ring-wrong');
    const sizes = { x: x - 8, y: y - 8, width: width + 16, height: height + 16, rx: 12 };
    for (const [size, value] of Object.entries(sizes)) ring.setAttribute(size, String(value));
    svg.append(ring);
    return [ring];
  });
  return () => rings.forEach((ring) => ring.remove());
}
