import { voiceNow } from '../words/index.ts';
import { useMemo } from 'preact/hooks';
import {
  assemble,
  companyOf,
  ownName,
  type Part,
  piecesOf,
  type Train,
} from '../../engine/train/index.ts';
import { type Mark, round, type Scene } from '../../telling/scene/index.ts';
import { paintStickDiagram, type StickDiagram } from '../../telling/stickdiagram/index.ts';
import { layoutOf } from '../diagram/index.ts';
import { Drawing } from '../figure/index.ts';
import { words } from './words.ts';

/** Where a part sits: the stick diagram, with the members and devices lit that it carries. */
export function Where({ train, part }: { readonly train: Train; readonly part: Part }) {
  const say = words();
  const voice = voiceNow();
  const drawn = useMemo(() => layoutOf(train, voice), [train, voice]);
  const scene = useMemo(() => {
    const bare = paintStickDiagram(drawn, say.where(voice.called(part.name)));
    return lit(drawn, bare, train, part);
  }, [drawn, part, say]);
  if (part.carries.length === 0) return <p class="aside">{say.nowhere}</p>;
  return (
    <figure class="strip-where">
      <Drawing scene={scene} />
      <figcaption class="aside">{say.where(voice.called(part.name))}</figcaption>
    </figure>
  );
}

/** Lights devices and wheels by their symbols, members by as much of their lines as is the part's. */
export function lit(drawn: StickDiagram, scene: Scene, train: Train, part: Part): Scene {
  const { bodies, bodyOf } = assemble(train);
  const own = ownName(train);
  const carried = new Set(part.carries.map(own));
  const wheels = new Map<string, Set<string>>();
  const lines: Mark[] = [];
  for (const name of part.carries) {
    const body = bodies[bodyOf(name) ?? -1];
    const line = drawn.lines.find(({ member }) => member === body?.label);
    if (!body || !line) continue;
    const [set = name] = name.split('.');
    const within = train.sets.some((its) => its.name === set) ? companyOf(train, set) : undefined;
    if (within) wheels.set(body.label, (wheels.get(body.label) ?? new Set()).add(within));
    // The whole body is the part's, unless another carries some of it.
    const others = train.teardown?.some((other) => {
      return other !== part && other.carries.some((its) => body.names.includes(own(its)));
    });
    const whole = !others || carried.has(body.label);
    const pieces = line.branches.filter(({ meets }) => whole || meets === within).map(({ d }) => d);
    const trunks = whole ? [line.shaft, line.drum].map(trunkPath) : [];
    const d = [...pieces, ...trunks, ...(whole && line.disc ? [line.disc.d] : [])].join('');
    if (d !== '') lines.push({ mark: 'path', look: 'strip-lit-line', d });
  }
  const devices = train.devices.filter((device) =>
    piecesOf(device).some((its) => carried.has(its)),
  );
  const named = new Set(devices.map(({ name }) => name));
  const visit = (mark: Mark, set?: string): Mark => {
    if (mark.mark !== 'group') return mark;
    const { about } = mark;
    const inner = about?.kind === 'set' ? about.name : set;
    const isWheel =
      about?.kind === 'member' && set !== undefined && wheels.get(about.name)?.has(set);
    const isLit = isWheel || (about?.kind === 'device' && named.has(about.name));
    const marks = mark.marks.map((its) => visit(its, inner));
    return { ...mark, marks, ...(isLit && { look: `${mark.look ?? ''} strip-lit` }) };
  };
  return { ...scene, marks: [...scene.marks.map((its) => visit(its)), ...lines] };
}

function trunkPath(trunk: { x1: number; x2: number; y1: number } | undefined): string {
  return trunk ? `M${round(trunk.x1)} ${round(trunk.y1)}H${round(trunk.x2)}` : '';
}
