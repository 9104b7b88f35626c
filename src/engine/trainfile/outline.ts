import { ourWord } from '../words/index.ts';
import type { BandEntry } from './band.ts';
import { type DeviceEntry, FILE, type PairEntry, type SetEntry } from './definition.ts';
import type { Way } from '../train/index.ts';
import type { EndPlayEntry } from './endplay.ts';
import type { Findings } from './findings.ts';
import type { Mention } from './mention.ts';
import type { CapacityEntry, EngineEntry } from './capacity.ts';
import type { CarEntry } from './car.ts';
import type { PackEntry } from './pack.ts';
import type { FluidEntry, PartEntry } from './part.ts';
import type { Node } from './node.ts';
import type { PreloadEntry } from './preload.ts';
import type { WearEntry } from './wear.ts';
import { Walker } from './walker.ts';

/** A file whose entries have the right form, whatever their names mean. */
export interface Outline {
  /** What was well formed; the rest is left out, and is an error already. */
  readonly file: FileEntries;
  readonly mentions: readonly Mention[];
}

/** The file's values. Maps keep the file's order, and any key. */
export interface FileEntries {
  readonly name?: string;
  readonly about?: string;
  readonly input?: string;
  readonly output?: string | readonly string[];
  readonly forward?: Way;
  readonly 'final drive'?: string | readonly string[];
  readonly ends?: readonly [string, string];
  readonly sets?: ReadonlyMap<string, SetEntry>;
  readonly 'gear pairs'?: ReadonlyMap<string, PairEntry>;
  readonly joined?: ReadonlyMap<string, readonly string[]>;
  readonly devices?: ReadonlyMap<string, DeviceEntry>;
  readonly ranges?: ReadonlyMap<string, ReadonlyMap<string, readonly string[]>>;
  readonly teardown?: ReadonlyMap<string, PartEntry>;
  readonly capacities?: ReadonlyMap<string, CapacityEntry>;
  readonly engine?: EngineEntry;
  readonly car?: CarEntry;
  readonly fluid?: FluidEntry;
  readonly endplay?: ReadonlyMap<string, EndPlayEntry>;
  readonly bands?: ReadonlyMap<string, BandEntry>;
  readonly preload?: ReadonlyMap<string, PreloadEntry>;
  readonly wear?: ReadonlyMap<string, WearEntry>;
  readonly packs?: ReadonlyMap<string, PackEntry>;
}

/** Reads a tree by the definitions; what does not fit them is an error in `findings`. */
export function outlineOf(root: Node, text: string, findings: Findings): Outline {
  const walker = new Walker(text, findings, partNamer(root));
  const file = walker.value(root, FILE, [], { from: root.at.from, to: root.at.from });
  return { file: (file ?? {}) as FileEntries, mentions: walker.mentions };
}

// Another word for a set's part is turned into ours, unless the set has a wheel of that name;
// a bevel set has pinions.
function partNamer(root: Node): (member: string) => string {
  const under = (node: Node | undefined, key: string) =>
    node?.kind === 'section' ? node.entries.find((entry) => entry.key === key)?.value : undefined;
  return (member) => {
    const [set = '', part] = member.split('.');
    if (part === undefined || ourWord(part) === part) return member;
    const its = under(under(root, 'sets'), set);
    const own = under(under(its, 'wheels'), part) ?? under(its, 'sides');
    return own ? member : `${set}.${ourWord(part)}`;
  };
}
