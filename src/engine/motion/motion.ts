import { Base, equal, type Form, given, ONE, type Rational, type Row } from '../linear/index.ts';
import {
  type Assembly,
  assemble,
  type Device,
  isApplied,
  type MemberName,
  type Mesh,
  type Train,
} from '../train/index.ts';

/**
 * A train as the rows of its motion cone. THE sign convention: a speed is positive if the
 * member turns clockwise, seen from the input end; so is a torque that pushes it that way.
 *
 * Column k is the speed of body k + 1; the case, body 0, has none, for its speed is 0.
 * A multiplier λ of a row is a torque: λ · (the row's coefficient) acts on each body.
 */
export interface Motion {
  readonly train: Train;
  readonly assembly: Assembly;
  readonly columns: number;
  /** The meshes that say something, each once, beside their rows, which are the base's. */
  readonly meshes: readonly Mesh[];
  readonly base: Base;
  readonly devices: readonly DeviceRows[];
  /** The form whose value is the member's speed. */
  speedOf(member: MemberName): Form;
  /** The form whose value is a member's speed less another's. */
  apart(member: MemberName, other: MemberName): Form;
  /** The row that gives a member a speed. */
  givenRow(member: MemberName, speed: Rational): Row;
  /** A column t beyond the others, as a form, and the rows t ≥ −ω and t ≥ ω. */
  sizeOf(member: MemberName): { readonly size: Form; readonly rows: readonly Row[] };
}

/** A device as rows: `slip` is first member less second; absent rows say nothing. */
export interface DeviceRows {
  readonly device: Device;
  readonly slip: Form;
  readonly whenOn: Row | undefined;
  readonly whenOff: Row | undefined;
}

/** Throws where the train names members that it does not have: reading checks that. */
export function motionOf(train: Train): Motion {
  const assembly = assemble(train);
  const columns = assembly.bodies.length - 1;
  const speeds = assembly.bodies.map((_, body): Form => {
    return body === 0 ? { at: [], coef: [] } : { at: [body - 1], coef: [1] };
  });
  // Rows that nearly every question has are made once: the base remembers what it made of them.
  const once: Row[] = [];
  const size: Form = { at: [columns], coef: [1] };
  const sizes: Row[][] = [];
  const body = (member: MemberName): number => {
    const found = assembly.bodyOf(member);
    if (found === undefined) throw new Error(`no member is called ${member}`);
    return found;
  };
  const form = (terms: readonly (readonly [MemberName, number])[]) => {
    return formOf(terms.map(([member, coef]) => [body(member) - 1, coef]));
  };
  const rows: Row[] = [];
  const meshes: Mesh[] = [];
  const seen = new Set<string>();
  for (const mesh of assembly.gearing.meshes) {
    const row = level(form(willis(mesh)));
    const key = `${row.at} ${row.coef}`;
    if (row.at.length === 0 || seen.has(key)) continue; // wheels of one body; a mesh said twice
    seen.add(key);
    rows.push(row);
    meshes.push(mesh);
  }
  const devices = train.devices.map((device) => deviceRows(device, form));
  return {
    train,
    assembly,
    columns,
    meshes,
    base: new Base(columns, rows),
    devices,
    speedOf: (member) => speeds[body(member)] as Form,
    apart: (member, other) =>
      form([
        [member, 1],
        [other, -1],
      ]),
    givenRow: (member, speed) => {
      const at = body(member);
      if (!equal(speed, ONE)) return given(speeds[at] as Form, speed);
      return (once[at] ??= given(speeds[at] as Form, speed));
    },
    sizeOf: (member) => {
      const at = body(member);
      return { size, rows: (sizes[at] ??= sizeRows(speeds[at] as Form, columns)) };
    },
  };
}

/**
 * The motion of a train with the same gears as `motion`'s and other devices, as after a fault
 * of one of them: what was solved for the gears is shared. The devices join the same members.
 */
export function withDevices(motion: Motion, train: Train): Motion {
  const form = (terms: readonly (readonly [MemberName, number])[]) => {
    return formOf(terms.map(([member, coef]) => [motion.speedOf(member).at[0] ?? -1, coef]));
  };
  const devices = train.devices.map((device) => {
    const known = motion.devices.find((rows) => rows.device === device);
    return known ?? deviceRows(device, form);
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

// t ≥ −ω and t ≥ ω.
function sizeRows({ at, coef }: Form, t: number): Row[] {
  return [1, -1].map((sign): Row => {
    const signed = coef.map(() => sign);
    return { at: [...at, t], coef: [...signed, 1], sense: '>=', right: 0 };
  });
}

function deviceRows(
  device: Device,
  form: (terms: readonly (readonly [MemberName, number])[]) => Form,
): DeviceRows {
  const slip = form([
    [device.first, 1],
    [device.second, -1],
  ]);
  const locked = level(slip);
  // What slips is asked about above what it can carry.
  const open = device.stuck === 'open' || device.stuck === 'slipping';
  if (open) return { device, slip, whenOn: undefined, whenOff: undefined };
  if (device.stuck === 'locked') return { device, slip, whenOn: locked, whenOff: locked };
  if (isApplied(device)) return { device, slip, whenOn: locked, whenOff: undefined };
  const way = device.lets === 'clockwise' ? 1 : -1;
  const letting = form([
    [device.first, way],
    [device.second, -way],
  ]);
  const row: Row = { ...letting, sense: '>=', right: 0 };
  return { device, slip, whenOn: row, whenOff: row };
}

/** The row that says that a form is zero. */
function level(form: Form): Row {
  return { ...form, sense: '=', right: 0 };
}

// Terms of one column are added up; the case (column -1) and zeros are left out.
function formOf(terms: readonly (readonly [column: number, coef: number])[]): Form {
  const at: number[] = [];
  const coef: number[] = [];
  for (const [column, term] of terms) {
    if (column < 0) continue;
    const known = at.indexOf(column);
    if (known < 0) {
      at.push(column);
      coef.push(term);
    } else {
      coef[known] = (coef[known] as number) + term;
    }
  }
  if (!coef.includes(0)) return { at, coef };
  return { at: at.filter((_, k) => coef[k] !== 0), coef: coef.filter((term) => term !== 0) };
}
