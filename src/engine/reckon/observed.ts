import { type LinearForm, type Rational, ZERO } from '../linear/index.ts';
import type { Motion } from '../motion/index.ts';
import type { Device, MemberName } from '../train/index.ts';
import type { Quantity } from './quantity.ts';
import { speedsOf } from './speeds.ts';
import { speedAt, type Ruling } from './ruling.ts';

/** How a train turns, as far as it is settled; where nothing turns it is at rest. */
export interface Observed {
  /** Of any member, planets whose teeth nobody counted too: who tells of speeds leaves those out. */
  speedOf(member: MemberName): Quantity;
  /** By member name but for the case, and for planets whose speed cannot be told. */
  readonly members: ReadonlyMap<MemberName, Quantity>;
  /** Of planets whose teeth are known, against their carriers. */
  readonly onPins: ReadonlyMap<MemberName, Quantity>;
  /** Of the devices: first member less second. */
  readonly slips: ReadonlyMap<Device, Quantity>;
  /**
   * One motion among those that answer the question, to draw: it meets every row, and what is
   * free may turn otherwise. By member name but for the case.
   */
  readonly drawn: ReadonlyMap<MemberName, Rational>;
}

/** Every speed among the motions that answer the ruling's question. */
export function observe(ruling: Ruling): Observed {
  const { motion } = ruling;
  const { assembly, devices } = motion;
  const turning = assembly.members.filter((member) => assembly.bodyOf(member) !== 0);
  const drawn = new Map(turning.map((member) => [member, speedAt(ruling, member)]));
  if (!ruling.turns) {
    const slips = new Map(devices.map(({ device }) => [device, ZERO]));
    return { speedOf: () => ZERO, members: new Map(), onPins: new Map(), slips, drawn };
  }
  const pins = pinsOf(motion);
  const bodies = motion.names.map(motion.speedOf);
  const speeds = speedsOf(ruling, [
    ...bodies,
    ...devices.map(({ slip }) => slip),
    ...pins.values(),
  ]);
  const at = (form: LinearForm) => speeds.get(form) ?? ZERO;
  const speedOf = (member: MemberName) => at(motion.speedOf(member));
  const silent = silentBodies(motion);
  const shown = turning.filter((member) => !silent.has(assembly.bodyOf(member) as number));
  return {
    speedOf,
    members: new Map(shown.map((member) => [member, speedOf(member)])),
    onPins: new Map([...pins].map(([member, form]) => [member, at(form)])),
    slips: new Map(devices.map(({ device, slip }) => [device, at(slip)])),
    drawn,
  };
}

// The speeds of the planets whose teeth are known against their carriers.
function pinsOf({ assembly, apart }: Motion): ReadonlyMap<MemberName, LinearForm> {
  const known = assembly.gearing.planets.filter((planet) => planet.known);
  return new Map(known.map(({ member, carrier }) => [member, apart(member, carrier)]));
}

// Planets whose teeth nobody counted, and bevel pinions, which turn about another axis.
function silentBodies({ assembly }: Motion): Set<number> {
  const silent = new Set(assembly.onPins);
  for (const { member, known, crosswise } of assembly.gearing.planets) {
    if (known && !crosswise) silent.delete(assembly.bodyOf(member) as number);
  }
  return silent;
}
