import { type LinearForm, given, negate, type Rational, type Row } from '../linear/index.ts';
import type { Device, MemberName, Mesh } from '../train/index.ts';

/**
 * A row of a train's programme, and whose it is. Nobody works out from where a row stands what it
 * says: who wants the price of a device looks for the row of that device.
 */
export type ConeRow = MeshRow | DeviceRow | GivenRow | TieRow | SizeRow;

/** Wheels in mesh turn as their teeth say. */
export interface MeshRow extends Row {
  readonly of: 'mesh';
  readonly mesh: Mesh;
}

/** A device that holds, or a one-way clutch, which does so one way. */
export interface DeviceRow extends Row {
  readonly of: 'device';
  readonly device: Device;
  /** First member less second. */
  readonly slip: LinearForm;
  /** The way in which the row pushes the device's first member: a one-way clutch's may be turned. */
  readonly pushes: 1 | -1;
}

/** A member has a speed that is given. */
export interface GivenRow extends Row {
  readonly of: 'given';
  readonly member: MemberName;
  readonly speed: Rational;
}

/** A member turns as the first of those that are tied does. */
export interface TieRow extends Row {
  readonly of: 'tie';
  readonly member: MemberName;
}

/** A speed is no larger than the column of sizes, one way or the other. */
export interface SizeRow extends Row {
  readonly of: 'size';
  readonly member: MemberName;
  /** The way in which the row pushes the member. */
  readonly pushes: 1 | -1;
}

export function meshRow(mesh: Mesh, form: LinearForm): MeshRow {
  const name = `${mesh.a.member} with ${mesh.b.member}`;
  return { ...level(form), of: 'mesh', mesh, name };
}

/** The members of the device turn as one. */
export function lockedRow(device: Device, slip: LinearForm): DeviceRow {
  return { ...level(slip), of: 'device', device, slip, pushes: 1, name: device.name };
}

/** The first member may turn against the second clockwise (`way` 1), or anticlockwise (-1). */
export function lettingRow(device: Device, slip: LinearForm, way: 1 | -1): DeviceRow {
  const coef = slip.coef.map((term) => (way === 1 ? term : negate(term)));
  const row = { at: slip.at, coef, sense: '>=', right: 0 } as const;
  return { ...row, of: 'device', device, slip, pushes: way, name: device.name };
}

export function givenRow(member: MemberName, form: LinearForm, speed: Rational): GivenRow {
  return { ...given(form, speed), of: 'given', member, speed, name: `${member} is given` };
}

/** `apart` is the member's speed less the first's. */
export function tieRow(member: MemberName, first: MemberName, apart: LinearForm): TieRow {
  return { ...level(apart), of: 'tie', member, name: `${member} as ${first}` };
}

/** size + ω ≥ 0 and size − ω ≥ 0, where the column `size` lies beyond the others. */
export function sizeRows(member: MemberName, { at, coef }: LinearForm, size: number): SizeRow[] {
  return ([1, -1] as const).map((pushes): SizeRow => {
    const signed = coef.map(() => pushes);
    const row = { at: [...at, size], coef: [...signed, 1], sense: '>=', right: 0 } as const;
    return { ...row, of: 'size', member, pushes, name: sizeName(member) };
  });
}

/** What the column of a member's sizes is called. */
export function sizeName(member: MemberName): string {
  return `|${member}|`;
}

/** The row that says that a form is zero. */
function level(form: LinearForm): Row {
  return { ...form, sense: '=', right: 0 };
}
