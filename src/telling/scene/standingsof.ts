import {
  type Branch,
  type DeviceWork,
  isSpan,
  type Ledger,
  type Quantity,
} from '../../engine/flow/index.ts';
import { type Rational, signOf, toNumber } from '../../engine/linear/index.ts';
import { type Assembly, type MemberName, outputsOf, type Train } from '../../engine/train/index.ts';
import { type DeviceDoing, doingOf, MARKS } from '../narrative/index.ts';
import type { Standing } from './scene.ts';
import type { DeviceStanding, MemberStanding, Standings } from './standing.ts';

/** An answer as far as a drawing shows it; what an answer does not tell may be left out. */
export interface Shown {
  readonly ledger?: Ledger | undefined;
  /** By member name; ranges are free. */
  readonly speeds: ReadonlyMap<MemberName, Quantity>;
  readonly devices?: ReadonlyMap<string, DeviceWork> | undefined;
  readonly branches?: readonly Branch[] | undefined;
  /** The sets and gear pairs through which power goes round in a circle. */
  readonly circling?: readonly string[] | undefined;
  /** Which end a member is. */
  readonly ends?: ReadonlyMap<MemberName, 'input' | 'output'> | undefined;
}

/** What stands beside the names, as a door words it: the torque through a member. */
export interface StandingWords {
  /** In parts of the torque that is put in; not negative: at an end what goes in or out there. */
  readonly torque: (parts: number) => string;
}

/** Which end each member is that is one. */
export function endsOf(train: Train): Map<MemberName, 'input' | 'output'> {
  return new Map([
    [train.input, 'input'],
    ...outputsOf(train).map((member) => [member, 'output'] as const),
  ]);
}

/** How members and devices stand in an answer, for `paintStickDiagram`. */
export function standingsOf(assembly: Assembly, shown: Shown, words: StandingWords): Standings {
  const through = torquesOf(shown);
  const power = powersOf(assembly, shown, through);
  const members = new Map<string, MemberStanding>();
  assembly.bodies.forEach(({ label }, body) => {
    const speed = shown.speeds.get(label);
    const torque = through.get(label) ?? 0;
    members.set(label, memberStanding(speed, torque, power.get(body), words));
  });
  const devices = new Map<string, DeviceStanding>();
  for (const [name, work] of shown.devices ?? []) devices.set(name, deviceStanding(work));
  return { members, devices, loads: loadsOf(shown), circling: new Set(shown.circling) };
}

function memberStanding(
  speed: Quantity | undefined,
  torque: number,
  power: number | undefined,
  words: StandingWords,
): MemberStanding {
  const loaded = torque > 0;
  const says = loaded ? { says: words.torque(torque) } : {};
  if (speed !== undefined && isSpan(speed)) return { standing: 'free', mark: MARKS.free };
  const turns = speed === undefined ? 0 : signOf(speed);
  const way = turns === 0 ? {} : ({ way: turns > 0 ? 'clockwise' : 'anticlockwise' } as const);
  // What surely stands still is held, with or without a load.
  if (turns === 0 && (loaded || speed !== undefined)) {
    return { standing: 'held', mark: MARKS.held, ...says };
  }
  if (!loaded) return { standing: 'idle', mark: '', ...way };
  return {
    standing: 'carrying',
    mark: '',
    ...way,
    ...says,
    ...(power !== undefined && { power }),
  };
}

// At an end, what goes in or out there: a branch that goes round through its body is not of it.
// Elsewhere, what passes through.
function torquesOf({ ledger, ends }: Shown): ReadonlyMap<MemberName, number> {
  return new Map(
    ledger?.bodies.map(({ member, entries }) => {
      const outside = entries.filter(({ by, name }) => by === 'end' && ends?.has(name));
      const pushes = (outside.length > 0 ? outside : entries).map(({ torque }) => largest(torque));
      const [on, back] = [1, -1].map((way) => {
        return pushes.reduce((sum, push) => sum + Math.max(0, push * way), 0);
      }) as [number, number];
      return [member, outside.length > 0 ? Math.max(on, back) : on];
    }),
  );
}

const STANDINGS: Readonly<Record<DeviceDoing, Standing>> = {
  on: 'carrying',
  idle: 'idle',
  holding: 'carrying',
  'over-running': 'over-running',
  off: 'released',
};

function deviceStanding(work: DeviceWork): DeviceStanding {
  const doing = doingOf(work);
  return { standing: STANDINGS[doing], mark: MARKS[doing] };
}

// The power through each body, as a part of what is put in.
function powersOf(
  assembly: Assembly,
  { branches = [], ends, speeds }: Shown,
  through: ReadonlyMap<MemberName, number>,
): ReadonlyMap<number, number> {
  const passes = (label: MemberName) => {
    const speed = speeds.get(label);
    return (through.get(label) ?? 0) * (speed ? Math.abs(largest(speed)) : 0);
  };
  const labels = [...(ends?.keys() ?? [])].map((end) => {
    return assembly.bodies[assembly.bodyOf(end) ?? 0]?.label ?? end;
  });
  const whole = Math.max(0, ...labels.map(passes));
  const power = new Map<number, number>();
  if (whole > 0) assembly.bodies.forEach(({ label }, b) => power.set(b, passes(label) / whole));
  for (const { member, power: brought } of branches) {
    const body = assembly.bodyOf(member) ?? 0;
    power.set(body, Math.max(power.get(body) ?? 0, Math.abs(largest(brought))));
  }
  return power;
}

// Ends are told by which end they are; a member that a hand is on, by its name. Power goes to
// what pushes a body against the way it turns.
function loadsOf({ ledger, ends, speeds }: Shown): Standings['loads'] {
  return new Map(
    ledger?.bodies.map(({ member, entries }) => {
      const speed = speeds.get(member);
      const turns = speed === undefined || isSpan(speed) ? 0 : signOf(speed);
      const pushes = entries.map(({ by, name, torque }): [string, number] => {
        const thing = by === 'end' ? (ends?.get(name) ?? name) : name;
        return [thing, -Math.sign(largest(torque)) * turns];
      });
      return [member, new Map(pushes)];
    }),
  );
}

function largest(quantity: Quantity): number {
  if (!isSpan(quantity)) return toNumber(quantity);
  const ends = [quantity.from, quantity.to].filter((end): end is Rational => end !== null);
  return ends.map(toNumber).reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);
}
