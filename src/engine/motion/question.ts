import { NOTHING, type Programme, type Rational } from '../linear/index.ts';
import type { MemberName } from '../train/index.ts';
import type { Motion } from './motion.ts';
import { type ConeRow, sizeName, type TieRow, tieRow } from './row.ts';

/** What is asked of a train: some speeds are given, and perhaps an end is reluctant to turn. */
export interface ConeQuestion {
  /** The friction devices that are applied. */
  readonly on: ReadonlySet<string>;
  readonly given: readonly GivenSpeed[];
  /** Members that turn as the first of them does, as wheels on a straight road. */
  readonly tied?: readonly MemberName[];
  /** The member whose speed, either way, is to be as small as the train allows. */
  readonly reluctant?: MemberName;
}

export interface GivenSpeed {
  readonly member: MemberName;
  readonly speed: Rational;
}

/**
 * A question as a programme, each row with whose it is: `programmeText` prints it in the names of
 * the members. The meshes' rows stand first, for the base has them solved.
 */
export interface Posed extends Programme {
  readonly rows: readonly ConeRow[];
}

/**
 * A row for each mesh, for each device that can hold as things stand, for each given speed and each
 * tie; and for a reluctant member t ≥ ω and t ≥ −ω, of which t, a column of its own, is minimised.
 * Throws where a device or a member is asked about that the train does not have.
 */
export function pose(motion: Motion, question: ConeQuestion): Posed {
  refuseStrangers(motion, question.on);
  const { columns, names } = motion;
  const rows: ConeRow[] = [...motion.meshes];
  for (const { device, whenOn, whenOff } of motion.devices) {
    const row = question.on.has(device.name) ? whenOn : whenOff;
    if (row) rows.push(row);
  }
  for (const { member, speed } of question.given) rows.push(motion.givenRow(member, speed));
  rows.push(...tieRows(motion, question.tied));
  if (question.reluctant === undefined) return { columns, names, rows, minimise: NOTHING };
  const { size, rows: bounds } = motion.sizeOf(question.reluctant);
  rows.push(...bounds);
  const all = [...names, sizeName(question.reluctant)];
  return { columns: columns + 1, names: all, rows, minimise: size };
}

/** A row for each tied member but the first. */
export function tieRows(motion: Motion, tied: readonly MemberName[] = []): TieRow[] {
  const [first, ...others] = tied;
  if (first === undefined) return [];
  return others.map((member) => tieRow(member, first, motion.apart(member, first)));
}

function refuseStrangers({ devices }: Motion, on: Iterable<string>): void {
  for (const name of on) {
    if (devices.some(({ device }) => device.name === name)) continue;
    const names = devices.map(({ device }) => device.name).join(', ');
    throw new RangeError(`no device is called ${name}: there are ${names}`);
  }
}
