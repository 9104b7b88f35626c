/**
 * A picture as plain data. Lengths are in sheet units (one is a CSS pixel at 100 %), x to the
 * right, y down, angles in degrees clockwise. Doors paint it; `toSvg` writes it.
 */
export interface Scene {
  readonly width: number;
  readonly height: number;
  /** The name by which a screen reader tells it. */
  readonly title: string;
  readonly marks: readonly Mark[];
}

export type Mark = Path | Words | Group;

export interface Path {
  readonly mark: 'path';
  /** Path data as in SVG 2, absolute commands. */
  readonly d: string;
  readonly look: string;
}

export interface Words {
  readonly mark: 'words';
  readonly x: number;
  /** The base line. */
  readonly y: number;
  readonly text: string;
  readonly look: string;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Sheet units. */
  readonly size: number;
}

/** Marks that belong together: moved as one, or speaking of one thing. */
export interface Group {
  readonly mark: 'group';
  readonly look?: string;
  readonly about?: SceneSubject;
  readonly at?: { readonly x: number; readonly y: number; readonly degrees?: number };
  readonly marks: readonly Mark[];
}

/** What a mark speaks of: a sentence that speaks of the same lights it. */
export interface SceneSubject {
  readonly kind: 'member' | 'device' | 'set' | 'pair' | 'mesh' | 'part';
  /** A member is named by the label of its body; a mesh as "within: a, b". */
  readonly name: string;
}

/** How a member or a device stands in the gear that is shown; drawn by weight, hatch and mark. */
export type Standing = 'carrying' | 'held' | 'over-running' | 'free' | 'idle' | 'released';
