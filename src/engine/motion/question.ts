import { type Form, NOTHING, type Programme, type Rational, type Row } from '../linear/index.ts';
import type { MemberName } from '../train/index.ts';
import type { Motion } from './motion.ts';

/** What is asked of a train: some speeds are given, and perhaps an end is reluctant to turn. */
export interface Question {
  /** The friction devices that are applied. */
  readonly on: ReadonlySet<string>;
  readonly given: readonly Given[];
  /** Members that turn as the first of them does, as wheels on a straight road. */
  readonly tied?: readonly MemberName[];
  /** The member whose speed, either way, is to be as small as the train allows. */
  readonly reluctant?: MemberName;
}

export interface Given {
  readonly member: MemberName;
  readonly speed: Rational;
}

/**
 * A question as a programme, and where its rows are. The first rows are the meshes', then one
 * for each device that can hold as things stand, one for each given speed and each tie, and for a
 * reluctant member t ≥ ω and t ≥ −ω, of which t, the last column, is minimised.
 */
export interface Posed {
  readonly programme: Programme;
  /** For each of the train's devices the row that it has, if it has one. */
  readonly deviceRow: readonly (number | undefined)[];
  readonly firstGiven: number;
  /** One for each tied member but the first. */
  readonly firstTie: number;
  readonly firstReluctant: number;
}

/** Throws where a device or a member is asked about that the train does not have. */
export function pose(motion: Motion, question: Question): Posed {
  refuseStrangers(motion, question.on);
  const rows: Row[] = [...motion.base.rows];
  const deviceRow = motion.devices.map(({ device, whenOn, whenOff }) => {
    const row = question.on.has(device.name) ? whenOn : whenOff;
    return row && rows.push(row) - 1;
  });
  const firstGiven = rows.length;
  for (const { member, speed } of question.given) rows.push(motion.givenRow(member, speed));
  const firstTie = rows.length;
  rows.push(...tiesOf(motion, question).map((form): Row => ({ ...form, sense: '=', right: 0 })));
  const firstReluctant = rows.length;
  const { columns } = motion;
  if (question.reluctant === undefined) {
    return {
      programme: { columns, rows, minimise: NOTHING },
      deviceRow,
      firstGiven,
      firstTie,
      firstReluctant,
    };
  }
  const { size, rows: bounds } = motion.sizeOf(question.reluctant);
  rows.push(...bounds);
  const programme = { columns: columns + 1, rows, minimise: size };
  return { programme, deviceRow, firstGiven, firstTie, firstReluctant };
}

/** What is zero of each tied member but the first: its speed less the first's. */
export function tiesOf(motion: Motion, { tied = [] }: Pick<Question, 'tied'>): Form[] {
  const [first, ...others] = tied;
  return first === undefined ? [] : others.map((member) => motion.apart(member, first));
}

function refuseStrangers({ devices }: Motion, on: Iterable<string>): void {
  for (const name of on) {
    if (devices.some(({ device }) => device.name === name)) continue;
    const names = devices.map(({ device }) => device.name).join(', ');
    throw new RangeError(`no device is called ${name}: there are ${names}`);
  }
}
