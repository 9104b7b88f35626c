import * as names from './name.ts';
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
  | 'set'
  | 'gear pair'
  | 'device'
  | 'join'
  | 'range'
  | 'gear'
  | 'wheel'
  | 'member'
  | 'applied'
  | 'shared'
  | 'meshed'
  | 'carried'
  | 'part'
  | 'on a part'
  | 'cover'
  | 'packed'
  | 'set band'
  | 'sized'
  | 'fed'
  | 'final pair'
  | 'closed';

/** The definitions of names. */
export const ROLES: ReadonlyMap<unknown, Role> = new Map<unknown, Role>([
  [names.SET_NAME, 'set'],
  [names.PAIR_NAME, 'gear pair'],
  [names.FINAL_PAIR, 'final pair'],
  [names.DEVICE_NAME, 'device'],
  [names.JOIN_NAME, 'join'],
  [names.RANGE_NAME, 'range'],
  [names.GEAR_NAME, 'gear'],
  [names.WHEEL_NAME, 'wheel'],
  [names.MEMBER, 'member'],
  [names.APPLIED_DEVICE, 'applied'],
  [names.SHARED_SET, 'shared'],
  [names.MESHED_WHEEL, 'meshed'],
  [names.CARRIED_WHEEL, 'carried'],
  [names.PART_NAME, 'part'],
  [names.CARRIED, 'on a part'],
  [names.COVER_NAME, 'cover'],
  [names.PACKED_DEVICE, 'packed'],
  [names.SET_BAND, 'set band'],
  [names.SIZED_DEVICE, 'sized'],
  [names.FED_DEVICE, 'fed'],
  [names.CLOSED_NAME, 'closed'],
]);
