import { type Assembly, CASE, type MemberName } from '../../engine/train/index.ts';
import type { Blank, Pin } from './blank.ts';
import { markOf, outlineOf } from './outline.ts';
import { Pen } from './pen.ts';

/** One toothed wheel of an end view; planets are as many wheels as there are copies. */
export interface EndWheel {
  /** The member that it is part of, and the label of that member's body. */
  readonly member: MemberName;
  readonly label: MemberName;
  /** `wheel` is of a gear pair, `side` and `pinion` of a bevel set. */
  readonly kind: 'sun' | 'ring' | 'planet' | 'wheel' | 'side' | 'pinion';
  readonly teeth: number;
  /** The closed path of its teeth, and of one tooth, about its own centre; a toothless wheel's
   * is a circle, and it has no marked tooth. */
  readonly outline: string;
  readonly mark: string;
  /** A circle by which its standing is told; of a ring, outside the teeth. */
  readonly rim: string;
  /** Its bore or pin, or a ring's outside; closed. */
  readonly edge: string;
  /** Where its centre is when nothing has turned: clockwise from the top, about the axis. */
  readonly pin: { readonly radius: number; readonly degrees: number };
  /** Its own angle when nothing has turned: tooth 0 stands so far clockwise of the top. */
  readonly phase: number;
  /** The member that carries its centre round; the case's never moves. */
  readonly orbitsWith: MemberName;
  /**
   * What turns it: the carrier's angle, and `per` times that of `turnsWith` against the carrier.
   * `per` is 1 and `turnsWith` the member itself where its speed is known.
   */
  readonly turnsWith: MemberName;
  readonly per: number;
  /** 0 in front, as seen from the end that is looked from; wheels behind are drawn lighter. */
  readonly plane: number;
}

/** What is known of a wheel but for its shape. */
export interface Turning {
  readonly kind: EndWheel['kind'];
  readonly orbitsWith: MemberName;
  readonly turnsWith?: MemberName;
  readonly per?: number;
  readonly plane: number;
  readonly toothless: boolean;
  /** The radius of its bore or pin; absent: as fits its size. */
  readonly bore?: number;
}

/** The shape of a wheel that is made once for all its copies. */
export function wheelOf(blank: Blank, assembly: Assembly, turning: Turning): EndWheel {
  const { member, teeth, ring, root, module } = blank;
  const { toothless, bore = BORE * root, turnsWith = member, per = 1, ...rest } = turning;
  const outer = rimRadius(blank);
  const rim = ring ? (root + outer) / 2 : Math.max(0.72 * root, root - 0.9 * module);
  return {
    ...rest,
    member,
    label: assembly.bodies[assembly.bodyOf(member) ?? 0]?.label ?? CASE,
    teeth,
    turnsWith,
    per,
    outline: toothless ? circle(root) : outlineOf(blank),
    mark: toothless ? '' : markOf(blank),
    rim: circle(rim),
    edge: circle(ring ? outer : bore),
    pin: { radius: 0, degrees: 0 },
    phase: within(blank.phase ?? 0),
  };
}

/** The radius of a bore or a pin, of that of the root. */
export const BORE = 0.36;

/** More than this many teeth are not drawn: on the sheet they would run into one another. */
export const MOST_TEETH = 600;

/** How far a wheel reaches from its centre: to its tips, or to a ring's outside. */
export function rimRadius({ ring, root, tip, module }: Blank): number {
  return ring ? root + Math.max(1.5 * module, 0.045 * root) : tip;
}

/** The furthest that a wheel reaches from the main axis. */
export function reachOf(blank: Blank): number {
  return (blank.pin?.radius ?? 0) + rimRadius(blank);
}

/** Wheels and pins made larger by a factor. */
export function enlarge(blanks: readonly Blank[], factor: number): void {
  for (const blank of blanks) {
    blank.module *= factor;
    blank.tip *= factor;
    blank.root *= factor;
  }
  for (const pin of new Set(blanks.flatMap(({ pin: own }): Pin[] => (own ? [own] : [])))) {
    pin.radius = (pin.radius ?? 0) * factor;
  }
}

export function circle(radius: number): string {
  const pen = new Pen();
  pen.circle(radius);
  return pen.d;
}

/** The same direction in degrees from 0 to 360. */
export function within(degrees: number): number {
  return ((degrees % 360) + 360) % 360;
}
