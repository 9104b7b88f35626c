import type { MemberName } from '../../engine/train/index.ts';
import { inv, PRESSURE_ANGLE } from './involute.ts';

/**
 * A toothed wheel of an end view while it is laid out and cut. Lengths are in modules of the
 * first mesh, until the view is scaled.
 */
export interface Blank {
  readonly member: MemberName;
  readonly teeth: number;
  /** A ring gear: its teeth point inwards. */
  readonly ring: boolean;
  /** The pin that it turns on; absent: it turns about the main axis. */
  readonly pin?: Pin;
  module: number;
  /** Profile shift in modules; that of a ring moves its teeth outwards. */
  shift: number;
  /** Radii of the tips and of the bottoms of its teeth. */
  tip: number;
  root: number;
  /** The degrees by which tooth 0 stands clockwise of the top when nothing has turned. */
  phase?: number;
}

/** Where a planet turns: its distance from the main axis, and its angle in the first copy. */
export interface Pin {
  readonly body: string;
  radius?: number;
  degrees?: number;
}

/** Two wheels in mesh; of an internal mesh `b` is the ring gear. */
export interface Engagement {
  readonly a: Blank;
  readonly b: Blank;
  readonly internal: boolean;
}

export function baseRadius({ module, teeth }: Blank): number {
  return (module * teeth * Math.cos(PRESSURE_ANGLE)) / 2;
}

/**
 * Half the angle that a tooth (of a ring: a space) takes at the base circle, in radians; at
 * another radius it is less by the involute function of the pressure angle there.
 */
// On the pitch circle a tooth is (π/2 + 2x·tan α) modules thick, which is half of its pitch and
// what the shift adds.
export function baseHalfAngle(blank: Blank): number {
  const { teeth, shift } = blank;
  const half = (Math.PI / 2 + 2 * shift * Math.tan(PRESSURE_ANGLE)) / teeth + inv(PRESSURE_ANGLE);
  const slack = (SLACK * blank.module) / baseRadius(blank);
  return blank.ring ? half + slack : half - slack;
}

/**
 * How far each flank stands back from where it would touch without play, in modules: a line's
 * width in a large picture.
 */
const SLACK = 0.015;

/** The pressure angle at a radius; 0 at the base circle and within. */
export function angleAt(blank: Blank, radius: number): number {
  return Math.acos(Math.min(1, baseRadius(blank) / radius));
}

/** The distance between the axes of two wheels in mesh, in the units of their pins. */
export function distanceOf({ a, b }: Engagement): number {
  const [from, to] = [a, b].map(({ pin }) => centreOf(pin)) as [Centre, Centre];
  return Math.hypot(to.x - from.x, to.y - from.y);
}

export interface Centre {
  readonly x: number;
  readonly y: number;
}

/** Where a pin is, turned on by so many degrees clockwise; y is down, and 0° the top. */
export function centreOf(pin: Pin | undefined, turned = 0): Centre {
  const radius = pin?.radius ?? 0;
  const angle = (((pin?.degrees ?? 0) + turned) * Math.PI) / 180;
  return { x: radius * Math.sin(angle), y: -radius * Math.cos(angle) };
}
