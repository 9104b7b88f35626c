import type { Join, MemberName, Wheel } from './member.ts';

/** Two wheels in mesh, whose axes stand still in the frame of `carrier`. */
export interface Mesh {
  /** The set or gear pair to which it belongs. */
  readonly within: string;
  readonly a: Wheel;
  readonly b: Wheel;
  readonly carrier: MemberName;
  /** Chains turn their wheels the same way, as an internal mesh does. */
  readonly kind: 'external' | 'internal' | 'chain' | 'bevel';
  /** Whether, seen from the carrier, the wheels turn the same way or opposite ways. */
  readonly turns: 'same' | 'opposite';
}

/** A body that turns on a pin of `carrier`. */
export interface Planet {
  readonly member: MemberName;
  readonly within: string;
  readonly carrier: MemberName;
  /** Known if its teeth were counted or follow from others'; otherwise its speed is not. */
  readonly known: boolean;
  /** A bevel pinion's pin lies across the main axis: it has a speed on its pin only. */
  readonly crosswise: boolean;
}

/** What the sets and gear pairs of a train put into it; `welds` are names of one member. */
export interface Gearing {
  readonly members: readonly MemberName[];
  readonly meshes: readonly Mesh[];
  readonly planets: readonly Planet[];
  readonly welds: readonly Join[];
}

/** The name of a part of a set. */
export function partOf(set: string): (part: string) => MemberName {
  return (part) => `${set}.${part}`;
}

export function external(within: string, a: Wheel, b: Wheel, carrier: MemberName): Mesh {
  return { within, a, b, carrier, kind: 'external', turns: 'opposite' };
}

export function internal(within: string, a: Wheel, b: Wheel, carrier: MemberName): Mesh {
  return { within, a, b, carrier, kind: 'internal', turns: 'same' };
}

export function planetOf(
  within: string,
  member: MemberName,
  carrier: MemberName,
  known: boolean,
): Planet {
  return { member, within, carrier, known, crosswise: false };
}
