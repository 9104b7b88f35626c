import { Base, equal, type LinearForm, ONE, type Rational, sumOf } from '../linear/index.ts';
import {
  type Assembly,
  assemble,
  type Device,
  isApplied,
  type MemberName,
  type Mesh,
  type Train,
} from '../train/index.ts';
import {
  type DeviceRow,
  type GivenRow,
  givenRow,
  lettingRow,
  lockedRow,
  type MeshRow,
  meshRow,
  type SizeRow,
  sizeRows,
} from './row.ts';

/**
 * A train as the rows of its motion cone. THE sign convention: a speed is positive if the
 * member turns clockwise, seen from the input end; so is a torque that pushes it that way.
 *
 * Each body but the case, whose speed is 0, has a column: its speed. A multiplier λ of a row is a
 * torque: λ · (the row's coefficient) acts on each body.
 */
export interface Motion {
  readonly train: Train;
  readonly assembly: Assembly;
  readonly columns: number;
  /** What the columns are called: the label of each body. */
  readonly names: readonly MemberName[];
  /** The meshes that say something, each once; they are the rows of the base. */
  readonly meshes: readonly MeshRow[];
  readonly base: Base;
  readonly devices: readonly DeviceRows[];
  /** The form whose value is the member's speed; the same one for all names of a body. */
  speedOf(member: MemberName): LinearForm;
  /** The form whose value is a member's speed less another's. */
  apart(member: MemberName, other: MemberName): LinearForm;
  /** The row that gives a member a speed. */
  givenRow(member: MemberName, speed: Rational): GivenRow;
  /** A column t beyond the others, as a form, and the rows t ≥ −ω and t ≥ ω. */
  sizeOf(member: MemberName): { readonly size: LinearForm; readonly rows: readonly SizeRow[] };
}

/** A device as rows: `slip` is first member less second; absent rows say nothing. */
export interface DeviceRows {
  readonly device: Device;
  readonly slip: LinearForm;
  readonly whenOn: DeviceRow | undefined;
  readonly whenOff: DeviceRow | undefined;
}

/** Throws where the train names members that it does not have: reading checks that. */
export function motionOf(train: Train): Motion {
  const assembly = assemble(train);
  const names = assembly.bodies.slice(1).map(({ label }) => label);
  const columns = names.length;
  const speeds = assembly.bodies.map((_, body): LinearForm => {
    return body === 0 ? { at: [], coef: [] } : { at: [body - 1], coef: [1] };
  });
  const speedOf = (member: MemberName): LinearForm => {
    const speed = speeds[assembly.bodyOf(member) ?? -1];
    if (!speed) throw new Error(`no member is called ${member}`);
    return speed;
  };
  const rows: MeshRow[] = [];
  const seen = new Set<string>();
  for (const mesh of assembly.gearing.meshes) {
    const row = meshRow(
      mesh,
      sumOf(willis(mesh).map(([member, times]) => [speedOf(member), times])),
    );
    const key = `${row.at} ${row.coef}`;
    if (row.at.length === 0 || seen.has(key)) continue; // wheels of one body; a mesh said twice
    seen.add(key);
    rows.push(row);
  }
  const apart = (member: MemberName, other: MemberName) =>
    sumOf([
      [speedOf(member), 1],
      [speedOf(other), -1],
    ]);
  // Rows that nearly every question has are made once: the base remembers what it made of them.
  const once = new Map<MemberName, GivenRow>();
  const size: LinearForm = { at: [columns], coef: [1] };
  const sizes = new Map<MemberName, SizeRow[]>();
  return {
    train,
    assembly,
    columns,
    names,
    meshes: rows,
    base: new Base(columns, rows),
    devices: train.devices.map((device) => deviceRows(device, apart)),
    speedOf,
    apart,
    givenRow: (member, speed) => {
      if (!equal(speed, ONE)) return givenRow(member, speedOf(member), speed);
      return remembered(once, member, () => givenRow(member, speedOf(member), speed));
    },
    sizeOf: (member) => {
      return {
        size,
        rows: remembered(sizes, member, () => sizeRows(member, speedOf(member), columns)),
      };
    },
  };
}

/**
 * The motion of a train with the same gears as `motion`'s and other devices, as after a fault
 * of one of them: what was solved for the gears is shared. The devices join the same members.
 */
export function withDevices(motion: Motion, train: Train): Motion {
  const devices = train.devices.map((device) => {
    const known = motion.devices.find((rows) => rows.device === device);
    return known ?? deviceRows(device, motion.apart);
  });
  return { ...motion, train, devices };
}

/**
 * Willis's relation: seen from the carrier, speeds are as the teeth turned round. A mesh adds
 * a·(ω_a − ω_c) ± b·(ω_b − ω_c) = 0, plus where the wheels turn opposite ways (R. Willis,
 * Principles of Mechanism, 1841). The coefficients are also the torques on a, b and the
 * carrier for one unit of tooth force times module over two; their sum is 0.
 */
export function willis({ a, b, carrier, turns }: Mesh): [MemberName, number][] {
  const second = turns === 'opposite' ? b.teeth : -b.teeth;
  return [
    [a.member, a.teeth],
    [b.member, second],
    [carrier, -(a.teeth + second)],
  ];
}

function deviceRows(device: Device, apart: Motion['apart']): DeviceRows {
  const slip = apart(device.first, device.second);
  // What slips is asked about above what it can carry.
  const open = device.stuck === 'open' || device.stuck === 'slipping';
  if (open) return { device, slip, whenOn: undefined, whenOff: undefined };
  const locked = lockedRow(device, slip);
  if (device.stuck === 'locked') return { device, slip, whenOn: locked, whenOff: locked };
  if (isApplied(device)) return { device, slip, whenOn: locked, whenOff: undefined };
  const letting = lettingRow(device, slip, device.lets === 'clockwise' ? 1 : -1);
  return { device, slip, whenOn: letting, whenOff: letting };
}

function remembered<K, V>(known: Map<K, V>, key: K, make: () => V): V {
  let value = known.get(key);
  if (value === undefined) known.set(key, (value = make()));
  return value;
}
