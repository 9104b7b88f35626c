import { angleAt, baseHalfAngle, baseRadius, type Blank } from './blank.ts';
import { inv } from './involute.ts';
import { Pen } from './pen.ts';

/**
 * The teeth of a wheel about its own centre, tooth 0 at the top, each the mirror of itself: path
 * data, closed; a ring's without its rim. Flanks are true involutes within 0.3 % of a module and
 * the rounding of the pen; tips and roots are straight, as short as they are, and feet are
 * rounded; what of a flank lies below the base circle is radial.
 */
export function outlineOf(blank: Blank): string {
  const pen = new Pen();
  for (let k = 0; k < blank.teeth; k++) toothTo(pen, blank, k);
  pen.close();
  return pen.d;
}

/** One tooth alone, closed across its foot: the first, by which an eye follows the wheel. */
export function markOf(blank: Blank): string {
  const pen = new Pen();
  toothTo(pen, blank, 0);
  pen.close();
  return pen.d;
}

// From the root up on the anticlockwise side, across the tip, and down on the other.
function toothTo(pen: Pen, blank: Blank, k: number): void {
  const flank = flankOf(blank);
  const middle = (2 * Math.PI * k) / blank.teeth;
  const { root, footHalf, land, straight } = flank;
  const rise = (side: 1 | -1) => {
    const end = at(root, middle + side * (footHalf + land));
    const corner = at(root, middle + side * footHalf);
    const top = at(straight, middle + side * footHalf);
    return { end, corner, top };
  };
  const [before, after] = [rise(-1), rise(1)];
  if (k === 0) pen.move(before.end.x, before.end.y);
  else pen.line(before.end.x, before.end.y);
  const [foot, tip] = [point(flank, flank.from, middle, -1), point(flank, flank.to, middle, 1)];
  if (flank.radial) {
    pen.bend(before.corner, before.top);
    pen.line(foot.x, foot.y);
  } else pen.bend(before.corner, foot);
  curves(pen, flank, flank.from, flank.to, middle, -1);
  pen.line(tip.x, tip.y);
  curves(pen, flank, flank.to, flank.from, middle, 1);
  if (flank.radial) pen.line(after.top.x, after.top.y);
  pen.bend(after.corner, after.end);
}

// The involute of the base circle, by its roll t: at a radius of rb·√(1 + t²) it has turned
// through inv(arctan t) = t − arctan t from its root on the base circle.
interface Flank {
  readonly base: number;
  /** Half the angle of a tooth at the base circle, and whether it grows (ring) or shrinks. */
  readonly half: number;
  readonly grows: 1 | -1;
  /** The roll at the root's end, and at the tip's. */
  readonly from: number;
  readonly to: number;
  readonly pieces: number;
  /** Below the base circle: a radial piece, to where the fillet begins. */
  readonly radial: boolean;
  readonly straight: number;
  readonly root: number;
  /** Half the angle of the foot, and what the fillet takes of the root beside it. */
  readonly footHalf: number;
  readonly land: number;
}

function flankOf(blank: Blank): Flank {
  const { teeth, module, ring, root, tip } = blank;
  const base = baseRadius(blank);
  const grows = ring ? 1 : -1;
  const half = ring ? Math.PI / teeth - baseHalfAngle(blank) : baseHalfAngle(blank);
  const halfAt = (radius: number) => half + grows * inv(angleAt(blank, radius));
  // Teeth whose feet would meet above the root end where they meet.
  let end = root;
  while (halfAt(end) > (0.96 * Math.PI) / teeth) end -= grows * 0.02 * module;
  const straight = end - grows * FILLET * module;
  const beginning = ring ? straight : Math.max(base, straight);
  const [from, to] = [rollAt(beginning, base), rollAt(tip, base)];
  const span = Math.abs(to - from);
  const pieces = Math.max(1, Math.ceil(span / ((ERROR * 128 * module) / base) ** 0.25));
  const footHalf = halfAt(end);
  const land = Math.min((FILLET * module) / end, 0.45 * (Math.PI / teeth - footHalf));
  const radial = beginning - straight > 0.05 * module && !ring;
  return { base, half, grows, from, to, pieces, radial, straight, root: end, footHalf, land };
}

const FILLET = 0.25;

// A cubic with the involute's ends and tangents strays from it by at most 3·rb·h⁴/384 over a roll
// of h: the fourth derivative of the involute is about 3·rb long.
const ERROR = 0.003;

function rollAt(radius: number, base: number): number {
  return Math.sqrt(Math.max(0, (radius / base) ** 2 - 1));
}

function at(radius: number, angle: number): { x: number; y: number } {
  return { x: radius * Math.sin(angle), y: -radius * Math.cos(angle) };
}

function point({ base, half, grows }: Flank, roll: number, middle: number, side: 1 | -1) {
  const angle = middle + side * (half + grows * (roll - Math.atan(roll)));
  return at(base * Math.hypot(1, roll), angle);
}

// How the point moves with its roll.
function slope({ base, half, grows }: Flank, roll: number, middle: number, side: 1 | -1) {
  const angle = middle + side * (half + grows * (roll - Math.atan(roll)));
  const radius = base * Math.hypot(1, roll);
  const out = (base * roll) / Math.hypot(1, roll);
  const round = (side * grows * roll ** 2) / (1 + roll ** 2);
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return { x: out * sin + radius * cos * round, y: -out * cos + radius * sin * round };
}

function curves(
  pen: Pen,
  flank: Flank,
  from: number,
  to: number,
  middle: number,
  side: 1 | -1,
): void {
  const step = (to - from) / flank.pieces;
  for (let k = 0; k < flank.pieces; k++) {
    const [t0, t1] = [from + k * step, from + (k + 1) * step];
    const [p0, p1] = [point(flank, t0, middle, side), point(flank, t1, middle, side)];
    const [s0, s1] = [slope(flank, t0, middle, side), slope(flank, t1, middle, side)];
    const third = step / 3;
    pen.curve(
      p0.x + s0.x * third,
      p0.y + s0.y * third,
      p1.x - s1.x * third,
      p1.y - s1.y * third,
      p1.x,
      p1.y,
    );
  }
}
