import {
  type Branch,
  type DeviceWork,
  isSpan,
  type Ledger,
  type Quantity,
} from '../../engine/flow/index.ts';
import { type Rational, signOf, toNumber } from '../../engine/linear/index.ts';
import type { Assembly, MemberName } from '../../engine/train/index.ts';
import type { DeviceStanding, MemberStanding, Standings } from './standing.ts';

/** An answer as far as a drawing shows it; what an answer does not tell may be left out. */
export interface Shown {
  readonly ledger?: Ledger | undefined;
  /** By member name; ranges are free. */
  readonly speeds: ReadonlyMap<MemberName, Quantity>;
  readonly devices?: ReadonlyMap<string, DeviceWork> | undefined;
  readonly branches?: readonly Branch[] | undefined;
  /** Which end a member is. */
  readonly ends?: ReadonlyMap<MemberName, 'input' | 'output'> | undefined;
}

/** What stands beside the names: letters, and the torque through a member as a door words it. */
export interface StandingWords {
  readonly on: string;
  readonly idle: string;
  readonly holding: string;
  readonly overRunning: string;
  readonly held: string;
  readonly free: string;
  /** Of the torque through a member, in parts of the torque that is put in; not negative. */
  readonly torque: (parts: number) => string;
}

/** How members and devices stand in an answer, for `paintHalfSection`. */
export function standingsOf(assembly: Assembly, shown: Shown, words: StandingWords): Standings {
  const through = new Map(
    shown.ledger?.bodies.map(({ member, entries }) => {
      const pushes = entries.map(({ torque }) => largest(torque));
      return [member, pushes.reduce((sum, push) => sum + Math.max(0, push), 0)];
    }),
  );
  const power = new Map<number, number>();
  for (const { member, power: brought } of shown.branches ?? []) {
    const body = assembly.bodyOf(member) ?? 0;
    power.set(body, Math.max(power.get(body) ?? 0, Math.abs(largest(brought))));
  }
  const members = new Map<string, MemberStanding>();
  assembly.bodies.forEach(({ label }, body) => {
    const speed = shown.speeds.get(label);
    const torque = through.get(label) ?? 0;
    members.set(label, memberStanding(speed, torque, power.get(body), words));
  });
  const devices = new Map<string, DeviceStanding>();
  for (const [name, work] of shown.devices ?? []) devices.set(name, deviceStanding(work, words));
  return { members, devices, loads: loadsOf(shown), circling: circlingOf(shown.branches ?? []) };
}

function memberStanding(
  speed: Quantity | undefined,
  torque: number,
  power: number | undefined,
  words: StandingWords,
): MemberStanding {
  const loaded = torque > 0;
  const says = loaded ? { says: words.torque(torque) } : {};
  if (speed !== undefined && isSpan(speed)) return { standing: 'free', letter: words.free };
  const turns = speed === undefined ? 0 : signOf(speed);
  const way = turns === 0 ? {} : ({ way: turns > 0 ? 'clockwise' : 'anticlockwise' } as const);
  if (!loaded) return { standing: 'idle', letter: '', ...way };
  if (turns === 0) return { standing: 'held', letter: words.held, ...says };
  return {
    standing: 'carrying',
    letter: '',
    ...way,
    ...says,
    ...(power !== undefined && { power }),
  };
}

function deviceStanding({ state, torque }: DeviceWork, words: StandingWords): DeviceStanding {
  switch (state) {
    case 'applied':
      return isSpan(torque) || torque.num !== 0
        ? { standing: 'carrying', letter: words.on }
        : { standing: 'idle', letter: words.idle };
    case 'holding':
      return { standing: 'carrying', letter: words.holding };
    case 'over-running':
      return { standing: 'over-running', letter: words.overRunning };
    case 'released':
    case 'free':
      return { standing: 'released', letter: '' };
  }
}

// Ends are told by which end they are; a member that a hand is on, by its name.
function loadsOf({ ledger, ends }: Shown): ReadonlyMap<string, ReadonlySet<string>> {
  return new Map(
    ledger?.bodies.map(({ member, entries }) => {
      const names = entries.map(({ by, name }) =>
        by === 'end' ? (ends?.get(name) ?? name) : name,
      );
      return [member, new Set(names)];
    }),
  );
}

// More than all the power that goes in passes where some of it goes round.
function circlingOf(branches: readonly Branch[]): ReadonlySet<string> {
  const more = branches.filter(({ power }) => Math.abs(largest(power)) > 1 + 1e-12);
  return new Set(more.map(({ within }) => within));
}

function largest(quantity: Quantity): number {
  if (!isSpan(quantity)) return toNumber(quantity);
  const ends = [quantity.from, quantity.to].filter((end): end is Rational => end !== null);
  return ends.map(toNumber).reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);
}
