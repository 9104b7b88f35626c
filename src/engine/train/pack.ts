/**
 * The plates of a clutch or a brake as they lie, and by what its clearance is set. Lengths are
 * as they were written, with their unit, for their last digit tells of the tool.
 */
export interface Pack {
  /** The clutch or brake. */
  readonly device: string;
  /** From the piston to the snap ring. */
  readonly plates: readonly Plate[];
  /** From the piston, at rest, to the snap ring: what plates and clearance fill together. */
  readonly depth?: { readonly size: LengthText; readonly tolerance?: LengthText };
  readonly shelf?: Shelf;
  readonly limits?: PackLimits;
}

export type LengthText = string;

export interface Plate {
  readonly kind: PlateKind;
  readonly thickness: LengthText;
  /** More or less. */
  readonly tolerance?: LengthText;
  /** Coned on purpose by so much: a straight-edge shows a gap, and the plate is sound. */
  readonly coned?: LengthText;
  /** Of a cushion plate: how much thinner air on the piston makes it. */
  readonly squash?: LengthText;
  /** The pressure of that air. */
  readonly at?: string;
}

export const PLATE_KINDS = ['friction', 'steel', 'cushion', 'backing plate'] as const;
export type PlateKind = (typeof PLATE_KINDS)[number];

/** A part that comes in several thicknesses, each of which takes its own from the clearance. */
export interface Shelf {
  readonly part: ShelfPart;
  /** The one that was in when the clearance was measured. */
  readonly fitted: LengthText;
  readonly sizes: readonly LengthText[];
  readonly tolerance?: LengthText;
}

export const SHELF_PARTS = ['backing plate', 'steel', 'snap ring', 'piston'] as const;
export type ShelfPart = (typeof SHELF_PARTS)[number];

/** The unit's own limits; what is absent is not judged. */
export interface PackLimits {
  readonly clearance?: FileLimit;
  /** The clearance for each friction disc. */
  readonly 'each friction'?: FileLimit;
  /** The thickness of a friction disc, of a steel. */
  readonly friction?: FileLimit;
  readonly steel?: FileLimit;
  /** The gap under a straight-edge on a steel. */
  readonly cone?: FileLimit;
}

/** Absent: no limit on that side. A limit without a source is shown as unsourced. */
export interface FileLimit {
  readonly least?: LengthText;
  readonly most?: LengthText;
  readonly source?: string;
  /** The initials of whoever wrote it down. */
  readonly by?: string;
  /** How it departs from another of the same, so that nothing is judged by it; no file says so. */
  readonly doubted?: Departure;
}

/** Millimetres and inches taken for each other, a point that slipped, far off, or far wider. */
export type Departure = 'unit' | 'point' | 'far' | 'wide';
