import { assemble, type BevelSet, CASE, type Train } from '../../engine/train/index.ts';
import { type EndNote, type EndView, MARGIN, SHEET } from './view.ts';
import { circle, type EndWheel, MOST_TEETH } from './endwheel.ts';

/**
 * A bevel set from its end, as a scheme: teeth of bevel wheels stand along cones, and no flank
 * can be drawn true in this view. Each side gear is a face with its teeth from toe to heel, the
 * further one larger, so that both can be seen to turn; the pinions are blocks between them, on
 * cross pins that the carrier takes round. That a pinion turns on its pin is not to be seen from
 * here.
 */
export function bevelView(train: Train, set: BevelSet, seenFrom: EndView['seenFrom']): EndView {
  const assembly = assemble(train);
  const label = (member: string) => assembly.bodies[assembly.bodyOf(member) ?? 0]?.label ?? CASE;
  const outside = SHEET / 2 - MARGIN;
  const stripped = new Set(set.stripped);
  const side = (part: 'left' | 'right'): EndWheel => {
    const member = `${set.name}.${part}`;
    const near = (part === 'left') === (seenFrom === 'input');
    const teeth = set.sides[part === 'left' ? 0 : 1];
    const [from, to] = near ? [0.3, 0.5] : [0.8, 0.99];
    const bare = stripped.has(member) || teeth > MOST_TEETH;
    return {
      member,
      label: label(member),
      kind: 'side',
      teeth,
      outline: circle(to * outside) + (bare ? '' : facesOf(teeth, from * outside, to * outside)),
      mark: bare ? '' : faceOf(teeth, 0, from * outside, to * outside),
      rim: circle((from - 0.04) * outside),
      edge: circle(near ? 0.14 * outside : (from - 0.08) * outside),
      pin: { radius: 0, degrees: 0 },
      phase: 0,
      orbitsWith: CASE,
      turnsWith: member,
      per: 1,
      plane: near ? 0 : 1,
    };
  };
  const stub = (part: number) => (part * outside).toFixed(2);
  const carrier = `${set.name}.carrier`;
  const count = set.pinions ?? 2;
  const block: EndWheel = {
    member: `${set.name}.pinion`,
    label: label(`${set.name}.pinion`),
    kind: 'pinion',
    teeth: set.pinion ?? 0,
    outline: blockOf(0.08 * outside, 0.13 * outside, 0.115 * outside),
    mark: '',
    rim: `M0 ${stub(0.12)}V${stub(0.15)}M0 ${stub(-0.12)}V${stub(-0.15)}`,
    edge: '',
    pin: { radius: 0.65 * outside, degrees: 0 },
    phase: 0,
    orbitsWith: carrier,
    turnsWith: carrier,
    per: 1,
    plane: 0,
  };
  const blocks = Array.from({ length: count }, (_, k): EndWheel => {
    const degrees = (360 * k) / count;
    return { ...block, pin: { ...block.pin, degrees }, phase: degrees };
  });
  const sides = [side('left'), side('right')].toSorted((a, b) => b.plane - a.plane);
  return {
    name: set.name,
    kind: 'bevel',
    width: SHEET,
    height: SHEET,
    axis: { x: SHEET / 2, y: SHEET / 2 },
    wheels: [...sides, ...blocks],
    carrier: { member: carrier, label: label(carrier), plate: '' },
    notes: notesOf(set, count),
    seenFrom,
  };
}

function notesOf({ sides, pinions }: BevelSet, drawn: number): EndNote[] {
  const notes: EndNote[] = [];
  if (pinions === undefined) notes.push({ note: 'planets not counted', drawn });
  if (Math.max(...sides) > MOST_TEETH) notes.push({ note: 'teeth too fine' });
  return notes;
}

function facesOf(teeth: number, from: number, to: number): string {
  return Array.from({ length: teeth }, (_, k) => faceOf(teeth, k, from, to)).join('');
}

// A tooth as it is seen from above: half a pitch wide.
function faceOf(teeth: number, k: number, from: number, to: number): string {
  const [middle, half] = [(2 * Math.PI * k) / teeth, Math.PI / (2 * teeth)];
  const [left, right] = [middle - half, middle + half];
  return `M${at(from, left)}L${at(to, left)}L${at(to, right)}L${at(from, right)}Z`;
}

// The heel outwards, and lines for teeth.
function blockOf(toe: number, heel: number, half: number): string {
  const upright = (part: number) => {
    const [from, to] = [part * toe, part * heel].map((x) => x.toFixed(2));
    return `${from} ${half.toFixed(2)}L${to} ${(-half).toFixed(2)}`;
  };
  const lines = [-0.6, -0.2, 0.2, 0.6].map((part) => `M${upright(part)}`);
  const far = `${heel.toFixed(2)} ${(-half).toFixed(2)}L${toe.toFixed(2)} ${half.toFixed(2)}`;
  return `M${upright(-1)}L${far}Z${lines.join('')}`;
}

function at(radius: number, angle: number): string {
  return `${(radius * Math.sin(angle)).toFixed(2)} ${(-radius * Math.cos(angle)).toFixed(2)}`;
}
