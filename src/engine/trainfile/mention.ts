import * as definition from './definition.ts';
import type { Span } from './place.ts';

/** A name as it stands somewhere in the file. */
export interface Mention {
  readonly as: Role;
  readonly name: string;
  /** The keys and indices that lead to it. */
  readonly path: readonly string[];
  readonly at: Span;
}

/** What a name is where it stands; the first seven are the keys that make it so. */
export type Role =
  | 'set' | 'gear pair' | 'device' | 'join' | 'range' | 'gear' | 'wheel'
  | 'member' | 'applied' | 'shared' | 'meshed' | 'carried';

/** The definitions of names. */
export const ROLES: ReadonlyMap<unknown, Role> = new Map<unknown, Role>([
  [definition.SET_NAME, 'set'],
  [definition.PAIR_NAME, 'gear pair'],
  [definition.DEVICE_NAME, 'device'],
  [definition.JOIN_NAME, 'join'],
  [definition.RANGE_NAME, 'range'],
  [definition.GEAR_NAME, 'gear'],
  [definition.WHEEL_NAME, 'wheel'],
  [definition.MEMBER, 'member'],
  [definition.APPLIED_DEVICE, 'applied'],
  [definition.SHARED_SET, 'shared'],
  [definition.MESHED_WHEEL, 'meshed'],
  [definition.CARRIED_WHEEL, 'carried'],
]);
