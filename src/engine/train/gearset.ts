import type { MemberName } from './member.ts';

/**
 * A planetary set: wheels and a carrier that share one axis. Teeth are whole numbers ≥ 1.
 * Members are NAME.sun, NAME.ring, NAME.carrier and the planets on their pins.
 */
export type GearSet = PlainSet | PairSet | SteppedSet | SharingSet | WheelSet | BevelSet;

/** Sun, planets, ring. Planet teeth follow from the coaxial rule where they are not counted. */
export interface PlainSet extends NamedSet {
  readonly kind: 'plain';
  readonly sun: number;
  readonly ring: number;
  readonly planet?: number;
  /** How many planets stand round the sun; absent: not counted. */
  readonly planets?: number;
}

/** Sun, inner planet, outer planet, ring: each planet is a meshed pair. */
export interface PairSet extends NamedSet {
  readonly kind: 'pair';
  readonly sun: number;
  readonly ring: number;
  readonly inner?: number;
  readonly outer?: number;
  readonly pairs: number;
}

/** One planet body with two wheels: the sun meshes the first step, the ring the second. */
export interface SteppedSet extends NamedSet {
  readonly kind: 'stepped';
  readonly sun: number;
  readonly ring: number;
  readonly steps: readonly [number, number];
  readonly planets?: number;
}

/**
 * Wheels on the planets and the carrier of another set (of a pair set: on its outer planets).
 * With `pairs`, the sun reaches those planets through inner planets of its own.
 */
export interface SharingSet extends NamedSet {
  readonly kind: 'sharing';
  readonly shares: string;
  readonly sun?: number;
  readonly ring?: number;
  /** How many planets; absent: as many as the other set has. */
  readonly planets?: number;
  readonly pairs?: number;
  readonly inner?: number;
}

/** Any other arrangement: NAME.wheel for each wheel; those `carried` turn on NAME.carrier. */
export interface WheelSet extends NamedSet {
  readonly kind: 'wheels';
  readonly wheels: ReadonlyMap<string, number>;
  readonly carried: readonly string[];
  readonly meshes: readonly {
    readonly a: string;
    readonly b: string;
    readonly internal: boolean;
  }[];
}

/** A bevel differential: NAME.left and NAME.right side gears, pinions on NAME.carrier. */
export interface BevelSet extends NamedSet {
  readonly kind: 'bevel';
  readonly sides: readonly [number, number];
  readonly pinion?: number;
  readonly pinions?: number;
}

export interface NamedSet {
  readonly name: string;
  /** Set by faults: wheels with no teeth left, by member name. Absent: none. */
  readonly stripped?: readonly MemberName[];
}
