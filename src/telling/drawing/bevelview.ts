import { assemble, type BevelSet, CASE, type Train } from '../../engine/train/index.ts';
import type { EndView } from './endview.ts';
import { circle, type EndWheel } from './endwheel.ts';
import { MARGIN, SHEET } from './setview.ts';

/**
 * A bevel set from its end, as a scheme: teeth of bevel wheels stand along cones, and no flank
 * can be drawn true in this view. Each side gear is a face with a stroke a tooth, the further one
 * larger, so that both can be seen to turn; the pinions are blocks on their cross pins, which the
 * carrier takes round. That a pinion turns on its pin cannot be seen from here.
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
    const [from, to] = near ? [0.34, 0.52] : [0.8, 1];
    const bare = stripped.has(member);
    return {
      member,
      label: label(member),
      kind: 'sun',
      teeth,
      outline: circle(to * outside) + (bare ? '' : strokes(teeth, from * outside, to * outside)),
      mark: bare ? '' : sector(teeth, from * outside, to * outside),
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
  const carrier = `${set.name}.carrier`;
  const count = set.pinions ?? 2;
  const block: EndWheel = {
    member: `${set.name}.pinion`,
    label: label(`${set.name}.pinion`),
    kind: 'planet',
    teeth: set.pinion ?? 0,
    outline: blockOf(0.09 * outside, 0.14 * outside, 0.12 * outside),
    mark: '',
    rim: '',
    edge: `M0 ${(0.16 * outside).toFixed(2)}V${(-0.16 * outside).toFixed(2)}`,
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
    notes: set.pinions === undefined ? [{ note: 'planets not counted', drawn: count }] : [],
    seenFrom,
  };
}

function strokes(teeth: number, from: number, to: number): string {
  return Array.from({ length: teeth }, (_, k) => {
    const angle = ((k + 0.5) * 2 * Math.PI) / teeth;
    return `M${at(from, angle)}L${at(to, angle)}`;
  }).join('');
}

function sector(teeth: number, from: number, to: number): string {
  const half = Math.PI / teeth;
  return `M${at(from, -half)}L${at(to, -half)}L${at(to, half)}L${at(from, half)}Z`;
}

function blockOf(near: number, far: number, tall: number): string {
  const [a, b, c] = [near, far, tall].map((value) => value.toFixed(2));
  return `M-${a} ${c}L${a} ${c}L${b}-${c}L-${b}-${c}Z`;
}

function at(radius: number, angle: number): string {
  return `${(radius * Math.sin(angle)).toFixed(2)} ${(-radius * Math.cos(angle)).toFixed(2)}`;
}
