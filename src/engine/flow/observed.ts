import { type Form, type Rational, ZERO } from '../linear/index.ts';
import type { Motion } from '../motion/index.ts';
import { type Quantity, speedAt, speedsOf, type Verdict } from '../reckon/index.ts';
import type { MemberName } from '../train/index.ts';

/** The speeds of a train that turns, as far as they are settled. */
export interface Observed {
  /** By body. */
  readonly bodies: readonly Quantity[];
  /** By member name but for the case, and for planets whose speed cannot be told. */
  readonly members: ReadonlyMap<MemberName, Quantity>;
  /** Of planets whose teeth are known, against their carriers. */
  readonly onPins: ReadonlyMap<MemberName, Quantity>;
  /** Of the devices, in their order: first member less second. */
  readonly slips: readonly Quantity[];
}

/** Every speed among the motions that answer the verdict's question; the train must turn. */
export function observe(verdict: Verdict): Observed {
  const { assembly, devices, columns } = verdict.motion;
  const pins = pinsOf(verdict.motion);
  const single = Array.from({ length: columns }, (_, c): Form => ({ at: [c], coef: [1] }));
  const forms = [...single, ...devices.map(({ slip }) => slip), ...pins.map(({ form }) => form)];
  const speeds = speedsOf(verdict, forms);
  const bodies = [ZERO, ...speeds.slice(0, columns)];
  const slips = speeds.slice(columns, columns + devices.length);
  const silent = silentBodies(verdict.motion);
  const members = new Map<MemberName, Quantity>();
  for (const member of assembly.members) {
    const body = assembly.bodyOf(member) as number;
    if (body !== 0 && !silent.has(body)) members.set(member, bodies[body] as Quantity);
  }
  const onPins = new Map<MemberName, Quantity>();
  pins.forEach(({ member }, k) => {
    onPins.set(member, speeds[columns + devices.length + k] as Quantity);
  });
  return { bodies, members, onPins, slips };
}

/**
 * One motion among those that answer the question, to draw: it meets every row, and what is
 * free may turn otherwise. By member name but for the case; at rest where nothing turns.
 */
export function poseOf(verdict: Verdict): ReadonlyMap<MemberName, Rational> {
  const { assembly } = verdict.motion;
  const turning = assembly.members.filter((member) => assembly.bodyOf(member) !== 0);
  return new Map(turning.map((member) => [member, speedAt(verdict, member)]));
}

function pinsOf({ assembly, speedOf }: Motion): { member: MemberName; form: Form }[] {
  return assembly.gearing.planets
    .filter(({ known }) => known)
    .map(({ member, carrier }) => {
      const [planet, frame] = [speedOf(member), speedOf(carrier)];
      if (planet.at[0] === frame.at[0]) return { member, form: { at: [], coef: [] } };
      const at = [...planet.at, ...frame.at];
      return { member, form: { at, coef: [...planet.coef, ...frame.coef.map(() => -1)] } };
    });
}

// Planets whose teeth nobody counted, and bevel pinions, which turn about another axis.
function silentBodies({ assembly }: Motion): Set<number> {
  const silent = new Set(assembly.onPins);
  for (const { member, known, crosswise } of assembly.gearing.planets) {
    if (known && !crosswise) silent.delete(assembly.bodyOf(member) as number);
  }
  return silent;
}
