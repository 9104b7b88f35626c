import * as v from 'valibot';
import type { Expected } from './problem.ts';

// A part of a name: any script, no comma, colon or dot, no control or half character, no
// blank at either end, at most 80 characters.
const WORD = String.raw`(?!\s)[^,:.\p{Cc}\p{Cs}\p{Zl}\p{Zp}]{1,80}(?<!\s)`;
const name = (description: string) =>
  v.pipe(
    v.string('name' satisfies Expected),
    v.regex(new RegExp(`^${WORD}$`, 'u'), 'name' satisfies Expected),
    v.description(description),
  );
const member = (description: string) =>
  v.pipe(
    v.string('member' satisfies Expected),
    v.regex(new RegExp(`^${WORD}(\\.${WORD})?$`, 'u'), 'member' satisfies Expected),
    v.description(description),
  );
export const MEMBER = member(
  'A member: SET.part, `case`, the input, the output, or any name that you give it.',
);
export const JOIN_NAME = member('The name of the one member that the listed members make.');
export const SET_NAME = name(
  'The name of a planetary set; its members are NAME.sun, NAME.ring, NAME.carrier.',
);
export const PAIR_NAME = name('The name of a gear pair.');
export const FINAL_PAIR = name('A gear pair that stands behind the gears.');
export const END_NAME = name('What an end of the unit is called.');
export const DEVICE_NAME = name('The name of a device.');
export const RANGE_NAME = name('A position of the selector.');
export const GEAR_NAME = name('A gear of this range.');
export const WHEEL_NAME = name('The name of a wheel; the member is SET.wheel.');
export const SHARED_SET = name('The set whose planets and carrier these wheels use.');
export const APPLIED_DEVICE = name('A clutch, brake or band that is applied in this gear.');
export const CARRIED_WHEEL = name('A wheel that turns on the carrier.');
export const MESHED_WHEEL = name('A wheel of this set.');
export const PART_NAME = name('The name of a part as it comes off.');
export const CARRIED = member(
  'What the part carries: a member, a device, or a race of a one-way clutch (NAME.inner, NAME.outer).',
);
export const SIZED_DEVICE = name('A device whose capacity this is.');
export const PACKED_DEVICE = name('A clutch or brake whose plates these are.');
export const SET_BAND = name('A band whose clearance this is.');
export const BEARINGS_NAME = name('What the bearings are of.');
export const WORN_NAME = name('What is measured.');
export const SHAFT_NAME = name('What the end play is of.');
export const FED_DEVICE = name('A clutch, brake or band whose oil goes through the part.');
export const CLOSED_NAME = name('A clutch, brake, band or shaft that is measured.');
export const COVER_NAME = name('The name of another part.');

/** Whether a text may be a name: of a set, a device, a range, a gear, a plain member. */
export function isName(text: string): boolean {
  return v.is(DEVICE_NAME, text);
}
