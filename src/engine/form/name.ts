import * as v from 'valibot';
import type { Expected } from '../yaml/index.ts';
import type { Role } from './role.ts';

// A part of a name: any script, no comma, colon or dot, no control or half character, no
// blank at either end, at most 80 characters.
const WORD = String.raw`(?!\s)[^,:.\p{Cc}\p{Cs}\p{Zl}\p{Zp}]{1,80}(?<!\s)`;

/** A plain name; without a role it is nobody's. */
export const plainName = (description: string, role?: Role) =>
  inRole(
    v.pipe(
      v.string('name' satisfies Expected),
      v.regex(new RegExp(`^${WORD}$`, 'u'), 'name' satisfies Expected),
      v.description(description),
    ),
    role,
  );

/** A member's name: plain, or a set's and a part's. */
export const memberName = (description: string, role: Role = { as: 'member', names: 'member' }) =>
  inRole(
    v.pipe(
      v.string('member' satisfies Expected),
      v.regex(new RegExp(`^${WORD}(\\.${WORD})?$`, 'u'), 'member' satisfies Expected),
      v.description(description),
    ),
    role,
  );

// A definition that is made of this one by `v.pipe` keeps the role.
function inRole<Schema extends v.GenericSchema>(
  schema: Schema,
  role: Role | undefined,
): Schema & { readonly role: Role | undefined } {
  return { ...schema, role };
}

const ANY_NAME = plainName('A name.');
const ANY_MEMBER = memberName('A member.');

/** Whether a text may be a name: of a set, a device, a range, a gear, a plain member. */
export function isName(text: string): boolean {
  return v.is(ANY_NAME, text);
}

/** Whether a text may be the name of a member. */
export function isMemberName(text: string): boolean {
  return v.is(ANY_MEMBER, text);
}
