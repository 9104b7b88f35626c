import { plus, type Rational, times, ZERO } from '../linear/index.ts';
import { motionOf, willis } from '../motion/index.ts';
import { isSpan, isZero, type Quantity, stretched } from '../reckon/index.ts';
import { CASE, type MemberName, type Train } from '../train/index.ts';
import type { Branch, Working } from './answer.ts';

/**
 * The proof of an answer written out, for a person to add up: the torques on each body come to
 * nothing, and so do the tooth counts times the speeds of each mesh.
 */
export interface Ledger {
  readonly bodies: readonly BodyAccount[];
  readonly meshes: readonly MeshAccount[];
}

/** What everything puts on a body, clockwise positive. */
export interface BodyAccount {
  readonly member: MemberName;
  readonly entries: readonly LedgerEntry[];
}

export interface LedgerEntry {
  readonly by: 'set' | 'device' | 'end' | 'ground';
  /** The set or gear pair, the device, or the member that is turned or held from outside. */
  readonly name: string;
  readonly torque: Quantity;
}

/** Willis's relation of a mesh: the coefficients times the speeds come to nothing. */
export interface MeshAccount {
  readonly within: string;
  readonly terms: readonly {
    readonly member: MemberName;
    readonly coefficient: number;
    readonly speed: Rational;
  }[];
}

/** The pushes of an answer: from outside on members, by devices on their first-named members. */
export interface Pushes {
  readonly outside: ReadonlyMap<MemberName, Quantity>;
  readonly devices: ReadonlyMap<string, Quantity>;
  readonly branches: readonly Pick<Branch, 'within' | 'member' | 'torque'>[];
  /** Absent where nothing turns. */
  readonly drawn?: ReadonlyMap<MemberName, Rational>;
}

/** Writes the ledger of an answer; throws if an account of settled numbers does not balance. */
export function ledgerOf(train: Train, pushes: Pushes): Ledger {
  const { assembly, meshes } = motionOf(train);
  const accounts = assembly.bodies.map(({ label }) => ({
    member: label,
    entries: [] as LedgerEntry[],
  }));
  const note = (member: MemberName, entry: LedgerEntry) => {
    if (!isZero(entry.torque)) accounts[assembly.bodyOf(member) as number]?.entries.push(entry);
  };
  for (const [name, torque] of pushes.outside) note(name, { by: 'end', name, torque });
  for (const { within, member, torque } of pushes.branches) {
    note(member, { by: 'set', name: within, torque });
  }
  for (const { name, first, second } of train.devices) {
    const torque = pushes.devices.get(name) ?? ZERO;
    note(first, { by: 'device', name, torque });
    note(second, { by: 'device', name, torque: stretched(torque, MINUS_ONE) });
  }
  const onCase = sumOf(accounts[0]?.entries ?? []);
  if (onCase) note(CASE, { by: 'ground', name: CASE, torque: times(onCase, MINUS_ONE) });
  const loaded = accounts.filter(({ entries }) => entries.length > 0);
  for (const { member, entries } of loaded) {
    if (sumOf(entries)?.num) throw new Error(`the torques on ${member} do not balance`);
  }
  const { drawn } = pushes;
  const speed = (member: MemberName) => drawn?.get(member) ?? ZERO;
  const turning = drawn ? meshes : [];
  return {
    bodies: loaded,
    meshes: turning.map(({ mesh }) => ({
      within: mesh.within,
      terms: willis(mesh).map(([member, coefficient]) => {
        return { member, coefficient, speed: speed(member) };
      }),
    })),
  };
}

/** The pushes of a gear. */
export function pushesOf(train: Train, working: Working): Pushes {
  const { torques, outputs, devices, branches, drawn } = working;
  const outside = new Map([[train.input, torques.get('input') ?? ZERO], ...outputs]);
  const byDevice = [...devices].map(([name, { torque }]) => [name, torque] as const);
  const turns = working.state !== 'tied up';
  return { outside, devices: new Map(byDevice), branches, ...(turns && { drawn }) };
}

const MINUS_ONE: Rational = { num: -1, den: 1 };

// Undefined where one of them is not settled.
function sumOf(entries: readonly LedgerEntry[]): Rational | undefined {
  let sum = ZERO;
  for (const { torque } of entries) {
    if (isSpan(torque)) return undefined;
    sum = plus(sum, torque);
  }
  return sum;
}
