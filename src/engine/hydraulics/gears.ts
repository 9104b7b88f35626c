import { servoNow, type ServoNow } from './applied.ts';
import type { Call, Circuit } from './circuit.ts';
import { proveRest } from './proof.ts';
import { type Settled, Settling, type Stand } from './settle.ts';

/** The oil in a gear: what it comes to from the gear before, and what it does to each device. */
export interface OilInGear {
  readonly call: Call;
  readonly settled: Settled;
  /** In the circuit's order; none where the valves chase each other. */
  readonly servos: readonly ServoNow[];
  /** Some other order of moves ends elsewhere: the order decides. */
  readonly race: boolean;
  /** Other rests under the same command, by whence it is come to. A latch, and no fault of itself. */
  readonly latches: readonly Latch[];
}

export interface Latch {
  readonly from: 'start' | 'the gear above';
  readonly stand: Stand;
  readonly servos: readonly ServoNow[];
}

/**
 * Every gear of a range as it is come to the usual way: the first from engine start, each further one
 * from the gear before it. Each rest is proved; throws where one is not.
 */
export function oilInRange(circuit: Circuit, calls: readonly Call[]): OilInGear[] {
  const up: OilInGear[] = [];
  let from: Stand | undefined;
  for (const call of calls) {
    const settling = new Settling(circuit, call.command);
    const at = from ?? settling.start;
    const settled = settling.settle(at);
    const { rest } = settled;
    if (rest) proveRest(circuit, call.command, rest);
    const ends = settling.ends(at, TRIED);
    const race = ends.rests.length > 1 || (ends.endless && rest !== undefined);
    up.push({ call, settled, servos: servosOf(circuit, settled), race, latches: [] });
    if (rest) from = rest.stand;
  }
  return up.map((its, i) => {
    const above = up[i + 1]?.settled.rest?.stand;
    const { command } = its.call;
    const start = new Settling(circuit, command).start;
    const latches = [
      ...latchFrom(circuit, its, 'start', i > 0 ? start : undefined),
      ...latchFrom(circuit, its, 'the gear above', above),
    ];
    return latches.length > 0 ? { ...its, latches } : its;
  });
}

// Orders beyond these are not tried: a circuit that needs more has valves that hardly meet.
const TRIED = 500;

function latchFrom(
  circuit: Circuit,
  { call, settled }: OilInGear,
  from: Latch['from'],
  stand: Stand | undefined,
): Latch[] {
  if (!stand) return [];
  const other = new Settling(circuit, call.command).settle(stand);
  if (!other.rest || String(other.rest.stand) === String(settled.rest?.stand)) return [];
  proveRest(circuit, call.command, other.rest);
  return [{ from, stand: other.rest.stand, servos: servosOf(circuit, other) }];
}

function servosOf(circuit: Circuit, { rest }: Settled): ServoNow[] {
  return rest ? circuit.servos.map((servo) => servoNow(servo, rest.lines)) : [];
}
