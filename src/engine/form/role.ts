import type { Device } from '../train/index.ts';
import type { FileMistake, Passage } from '../yaml/index.ts';

/**
 * What a name is where it stands. All that is done with names follows from it: whether it means
 * something, what is offered, what is renamed, and what goes when its thing goes.
 */
export interface Role {
  /** What it is called among what is offered. */
  readonly as: string;
  /** What bears the name: of `carried`, a member or a device; of `gap`, what is measured. */
  readonly names: NamedKind;
  /** The key that makes the thing, and gives it the name. */
  readonly own?: true;
  /** Of a device: the ones that may stand here, and what is told of another. */
  readonly only?: (device: Device) => boolean;
  readonly otherwise?: (device: string) => FileMistake;
  /** Of a device: the ones that are offered; absent: those that may stand here. */
  readonly offered?: (device: Device) => boolean;
}

export type NamedKind =
  | 'set'
  | 'gear pair'
  | 'device'
  | 'member'
  | 'range'
  | 'gear'
  | 'wheel'
  | 'part'
  | 'carried'
  | 'gap'
  /** Whatever has a name. */
  | 'anything';

/** A name as it stands somewhere in the file. */
export interface Mention {
  readonly role: Role;
  readonly name: string;
  /** The keys and indices that lead to it. */
  readonly path: readonly string[];
  readonly at: Passage;
}

/** Whether something bears a name, by what the file mentions: itself, or as a part of it. */
export function isBorne(name: string, mentions: readonly Mention[]): boolean {
  const [whose] = name.split('.');
  return mentions.some(({ role, name: its }) => {
    return role.names !== 'anything' && (its === name || (role.own && its === whose));
  });
}
