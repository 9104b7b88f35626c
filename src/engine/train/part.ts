import type { FileLimit } from './pack.ts';

/**
 * A part as it comes off the bench, with the notes that its builder keeps. Nothing in the notes
 * changes how the train turns; what the part carries does.
 */
export interface Part {
  readonly name: string;
  /** Absent: told by its name or by what it carries, see shop/strip. */
  readonly kind?: PartKind;
  /** Members, devices, and races of one-way clutches: "low sprag.inner", "low sprag.outer". */
  readonly carries: readonly string[];
  /** What it engages inside and outside: a spline, lugs, a press fit. */
  readonly inner?: string;
  readonly outer?: string;
  /** Which of its faces is the one to look at. */
  readonly face?: string;
  /** Where that face looks, or the part itself; absent with a `face`: to the input end. */
  readonly faces?: Facing;
  /** The end of the unit that is up as it comes off and goes on; absent: see `upOf`. */
  readonly up?: End;
  /** What must line up. */
  readonly align?: string;
  readonly frictions?: number;
  readonly steels?: number;
  /** Whether it comes in several thicknesses, one of which is measured for and chosen. */
  readonly selective?: boolean;
  /** The pack, band, shaft or bearings whose clearance, end play or preload its thickness sets. */
  readonly sets?: string;
  readonly refit?: 'reuse' | 'replace';
  /** The file name of a photograph. */
  readonly photo?: string;
  /** How far it stands below the face of the case. */
  readonly height?: FileLimit;
  /** What it is bolted down with. */
  readonly bolts?: Bolts;
  /** Friction devices whose oil goes through it: no air before it is on; but see `coversPorts`. */
  readonly feeds?: readonly string[];
  /** Packs, bands, shafts and preloads that are complete, and can be measured, once it is on. */
  readonly closes?: readonly string[];
  /** Parts that cannot be reached while this one is on. */
  readonly covers?: readonly string[];
  /** Parts that must come off before this one can be reached; absent: see `coversOf`. */
  readonly under?: readonly string[];
  /** Parts that keep hands off it; absent: those that it is under. */
  readonly 'hidden by'?: readonly string[];
  /** Set by faults: not fitted. */
  readonly missing?: boolean;
}

/** The unit's own figure; without a source it is shown as unsourced. */
export interface Bolts {
  readonly torque?: TorqueText;
  readonly count?: number;
  /** The order in which they are drawn down. */
  readonly sequence?: string;
  /** Whether they are used once only, and are new each time. */
  readonly once?: boolean;
  readonly source?: string;
  /** The initials of whoever wrote it down. */
  readonly by?: string;
}

/** As it was written, with its unit. */
export type TorqueText = string;

/** What the unit is filled with. */
export interface Fluid {
  readonly kind?: string;
  /** How much, as it was written, with its unit. */
  readonly fill?: string;
  readonly source?: string;
  readonly by?: string;
}

/** What a part is, as files say it. */
export const PART_KINDS = [
  'shaft',
  'drum',
  'shell',
  'hub',
  'sun',
  'ring',
  'carrier',
  'gear',
  'pack',
  'band',
  'one-way clutch',
  'race',
  'washer',
  'bearing',
  'snap ring',
  'gasket',
  'seal',
  'piston',
  'spring',
  'servo',
  'pawl',
  'pump',
  'support',
  'cover',
  'valve body',
] as const;
export type PartKind = (typeof PART_KINDS)[number];

export const ENDS = ['input', 'output'] as const;
export type End = (typeof ENDS)[number];

/** `up` is whatever the fixture shows then. */
export const FACINGS = ['input', 'output', 'up', 'down'] as const;
export type Facing = (typeof FACINGS)[number];

/** Which end of the unit is up as a part comes off and goes on: as it says, or its forerunner. */
export function upOf(teardown: readonly Part[]): (part: Part) => End | undefined {
  const ups = new Map<Part, End | undefined>();
  let up: End | undefined;
  for (const part of teardown) ups.set(part, (up = part.up ?? up));
  return (part) => ups.get(part);
}

/** Where its face looks, in both terms, as far as they are known with that end up. */
export function facingOf(
  { face, faces }: Part,
  up: End | undefined,
): { readonly end?: End; readonly way?: 'up' | 'down' } | undefined {
  const to = faces ?? (face === undefined ? undefined : 'input');
  if (to === undefined) return undefined;
  const other = (end: End) => (end === 'input' ? 'output' : 'input');
  if (to === 'up' || to === 'down') {
    return { way: to, ...(up && { end: to === 'up' ? up : other(up) }) };
  }
  return { end: to, ...(up && { way: to === up ? 'up' : 'down' }) };
}
