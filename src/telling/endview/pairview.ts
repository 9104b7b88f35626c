import { assemble, CASE, type GearPair, type Train } from '../../engine/train/index.ts';
import type { Blank } from './blank.ts';
import { type EndView, MARGIN, SHEET } from './view.ts';
import { enlarge, MOST_TEETH, rimRadius, wheelOf } from './endwheel.ts';
import { blanksOf, pinDown } from './pinning.ts';
import { place } from './timing.ts';

/**
 * A gear pair from its end, the driver on the left; of an internal pair the smaller wheel is
 * inside. A chain's wheels have teeth of the same involutes, cut short, and no links are drawn:
 * it is a line, and its wheels as far apart as looks well, for the file does not tell the distance.
 */
export function pairView(train: Train, pair: GearPair, seenFrom: EndView['seenFrom']): EndView {
  const internal = pair.kind === 'internal';
  const isRing = (own: number, other: number) => internal && own > other;
  const { driver, driven } = pair;
  const teeth = [driver.teeth, driven.teeth] as const;
  const apart = internal ? Math.max(1, Math.abs(teeth[0] - teeth[1])) : teeth[0] + teeth[1];
  const pin = { body: driven.member, radius: apart / 2, degrees: 90 };
  const cutting = { module: 1, shift: 0, tip: 0, root: 0 };
  const first: Blank = { ...driver, ring: isRing(teeth[0], teeth[1]), ...cutting };
  const second: Blank = { ...driven, ring: isRing(teeth[1], teeth[0]), pin, ...cutting };
  const engagement = first.ring
    ? { a: second, b: first, internal }
    : { a: first, b: second, internal };
  const [cluster] = pinDown([engagement]);
  pin.degrees = 90;
  const blanks = blanksOf([engagement]);
  const isChain = pair.kind === 'chain';
  if (isChain) blanks.forEach(shortTeeth);
  if (isChain) pin.radius *= CHAIN_APART;
  const left = Math.min(-rimRadius(first), pin.radius - rimRadius(second));
  const right = Math.max(rimRadius(first), pin.radius + rimRadius(second));
  const tall = Math.max(rimRadius(first), rimRadius(second));
  const factor = (SHEET - 2 * MARGIN) / (right - left);
  enlarge(blanks, factor);
  const copy = cluster && place(cluster, 0, 1, blanks);
  const assembly = assemble(train);
  const tooFine = Math.max(...teeth) > MOST_TEETH;
  const toothless = tooFine || (pair.stripped ?? false);
  const turning = { orbitsWith: CASE, plane: 0, toothless };
  const wheels = [first, second].map((blank) => {
    const wheel = wheelOf(blank, assembly, { ...turning, kind: blank.ring ? 'ring' : 'wheel' });
    const turned = blank.pin ? (copy?.turned.get(blank.pin) ?? 0) : 0;
    const phase = (blank.phase ?? 0) + turned;
    return blank.pin ? { ...wheel, pin: { radius: pin.radius, degrees: 90 }, phase } : wheel;
  });
  const height = Math.ceil(2 * tall * factor + 2 * MARGIN);
  const x = MARGIN - left * factor;
  return {
    name: pair.name,
    kind: 'pair',
    width: SHEET,
    height,
    axis: { x: seenFrom === 'input' ? x : SHEET - x, y: height / 2 },
    wheels: second.ring ? wheels.toReversed() : wheels,
    ...(isChain && { chain: loopOf(first, second, pin.radius) }),
    notes: tooFine ? [{ note: 'teeth too fine' }] : [],
    seenFrom,
  };
}

const CHAIN_APART = 1.25;

function shortTeeth(blank: Blank): void {
  blank.tip = blank.teeth / 2 + 0.5;
  blank.root = blank.teeth / 2 - 0.6;
}

// Round both pitch circles and along their outer tangents, about the driver's centre.
function loopOf(first: Blank, second: Blank, apart: number): string {
  const [r1, r2] = [first, second].map(({ module, teeth }) => (module * teeth) / 2) as [
    number,
    number,
  ];
  const cos = (r1 - r2) / apart;
  const sin = Math.sqrt(1 - cos ** 2);
  const at = (x: number, y: number) => `${x.toFixed(2)} ${y.toFixed(2)}`;
  const round = (radius: number, x: number, y: number, wide: boolean) =>
    `A${at(radius, radius)} 0 ${wide ? 1 : 0} 1 ${at(x, y)}`;
  return [
    `M${at(r1 * cos, -r1 * sin)}L${at(apart + r2 * cos, -r2 * sin)}`,
    round(r2, apart + r2 * cos, r2 * sin, r2 > r1),
    `L${at(r1 * cos, r1 * sin)}`,
    `${round(r1, r1 * cos, -r1 * sin, r1 > r2)}Z`,
  ].join('');
}
