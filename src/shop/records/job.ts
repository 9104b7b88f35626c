import type { FileLimit } from '../../engine/train/index.ts';
import type { ShelfSaid } from '../../engine/trainfile/index.ts';

/** A job as its file tells it. What the file does not tell is ''. */
export interface Job {
  readonly unit: string;
  /** The train file's name, and the start of the hash of its text. */
  readonly train?: { readonly file: string; readonly hash?: string };
  readonly complaint: string;
  /** The initials of whoever opened it, and when. */
  readonly by: string;
  readonly at: string;
  /** As they stand in the file, none of them twice. */
  readonly entries: readonly JobEntry[];
}

/** One thing that somebody wrote down, at a time. It is never changed: another may strike it. */
export interface JobEntry {
  /** Made of the entry's own text: 8 letters and digits. */
  readonly id: string;
  /** As clocks showed it, with their offset: "2026-11-25T13:40:07.120+01:00"; Z in UTC. */
  readonly at: string;
  /** Initials. */
  readonly who: string;
  /** What it says; absent where it only strikes another. */
  readonly told?: Told;
  /** The id of the entry that it strikes through, and why. */
  readonly strikes?: { readonly id: string; readonly because: string };
  /** The line of the file, from 1; 0 before it stands in one. */
  readonly line: number;
}

/** What an entry says. `text` is YAML in the form of the file that its kind has elsewhere. */
export type Told =
  /** A test and its outcome, in the words of a file of what was seen. */
  | { readonly kind: 'seen'; readonly of: string; readonly text: string }
  /** Of a pack, a shaft, a band or what wears, as in the file of readings of its kind. */
  | { readonly kind: 'reading'; readonly of: string; readonly text: string }
  /** The part that was taken for a device or a shaft. */
  | { readonly kind: 'chosen'; readonly of: string; readonly part: string }
  /** A hand check. */
  | {
      readonly kind: 'check';
      readonly of: string;
      readonly predicted?: string;
      readonly felt: string;
    }
  /** `which`: of a pack's clearance, frictions, … or a band's travel; absent: the usual one. */
  | {
      readonly kind: 'limit';
      readonly of: string;
      readonly which?: string;
      readonly limit: FileLimit;
      /** It is meant, however far it is from the train file's. */
      readonly sure?: true;
    }
  /** The row of parts from which this unit's gap is set, in the place of the train file's. */
  | { readonly kind: 'shelf'; readonly of: string; readonly shelf: ShelfSaid }
  /** A picture's file name; which part it is of, or which step of the work. */
  | {
      readonly kind: 'photograph';
      readonly name: string;
      readonly part?: string;
      readonly step?: string;
    }
  /** A part came off the unit. */
  | { readonly kind: 'removed'; readonly part: string }
  /** A part went on: a new one in its place, or the same; `why` the same one, where it was faulty. */
  | {
      readonly kind: 'installed';
      readonly part: string;
      readonly replaced?: true;
      readonly why?: string;
    }
  /**
   * A task of the build or of the first start is done: "9", "9 sound", "9.1", "9 stop", "start 3"
   * (`shop/build`). `of`: what a step is about, by the train file's name; `went`: how a check did;
   * `found`: the unit was taken up so, with all that goes before it, and nobody here did or saw it.
   */
  | {
      readonly kind: 'built';
      readonly task: string;
      readonly of?: string;
      readonly went?: 'right' | 'wrong' | 'found';
      readonly said?: string;
    }
  /** Everything from this step of the build on was taken off again. */
  | { readonly kind: 'unbuilt'; readonly step: string; readonly why: string }
  | { readonly kind: 'note'; readonly note: string }
  /** What `who` puts the initials under. */
  | { readonly kind: 'signed'; readonly what: string };
