import { describe, expect, it } from 'vitest';
import { type LineState, restDoubt, Settling, type Valve } from '../src/engine/hydraulics/index.ts';
import { toNumber } from '../src/engine/linear/index.ts';
import { Dice, seedOfRun, tries } from './dice.ts';
import { randomCircuit } from './oil/circuits.ts';
import { type Potentials, potentials } from './oil/network.ts';
import { Tally } from './tally.ts';

// Circuits of chance against a network of resistances solved in floating point, and every order in
// which their valves may move.

const SEED = seedOfRun();
const CIRCUITS = tries(1000);

describe(`${CIRCUITS} circuits of chance, seed ${SEED}`, () => {
  it('have on each line what a network of resistances has', () => {
    const tally = new Tally<LineState | 'circuit'>({
      fed: 1500,
      low: 0,
      between: 50,
      drained: 600,
      'shut in': 200,
      short: 400,
      circuit: 1000,
    });
    for (let k = 0; k < CIRCUITS; k++) {
      const { circuit, command, names } = randomCircuit(new Dice(SEED + k));
      const settling = new Settling(circuit, command);
      const at = circuit.valves.map(() => 0);
      const { lines } = settling.at(at);
      const peer = potentials(circuit, command, at, names);
      const short = [...lines.values()].some(({ state }) => state === 'short');
      expect(short, `case ${k}: an open way from the pump to the exhaust`).toBe(peer.isShort);
      tally.met('circuit');
      for (const [line, { state }] of lines) {
        tally.met(state);
        if (!short) expect(state, `case ${k}, ${line}`).toBe(stateOf(peer, line));
      }
    }
    tally.enough();
  });

  it('rest where some order of moves rests, and say when there is more than one end', () => {
    const tally = new Tally({ rest: 300, moved: 250, race: 6, chase: 50, unsure: 1 });
    for (let k = 0; k < CIRCUITS; k++) {
      const { circuit, command, names } = randomCircuit(new Dice(SEED + k));
      const settling = new Settling(circuit, command);
      const first = settling.at(settling.start).lines;
      if ([...first.values()].some(({ state }) => state === 'short')) continue;
      const every = everyEnd(circuit.valves, (stand) => potentials(circuit, command, stand, names));
      if (every === undefined) continue;
      const { rest, chase } = settling.settle(settling.start);
      const ends = settling.ends(settling.start);
      expect(ends.whole).toBe(true);
      expect(ends.rests.map(String).toSorted(), `case ${k}`).toEqual(every.rests.toSorted());
      expect(ends.endless, `case ${k}: valves that chase each other`).toBe(every.endless);
      if (rest) {
        expect(every.rests, `case ${k}`).toContain(String(rest.stand));
        expect(restDoubt(circuit, command, rest), `case ${k}`).toBeUndefined();
        tally.met('rest');
        if (rest.moves.length > 0) tally.met('moved');
        if (rest.unsure.length > 0) tally.met('unsure');
      } else {
        expect(every.endless, `case ${k}: ${JSON.stringify(chase)}`).toBe(true);
        tally.met('chase');
      }
      if (every.rests.length > 1) tally.met('race');
    }
    tally.enough();
  });

  it('are not proved with a line, a way or a valve changed', () => {
    const tally = new Tally({ valve: 1000, line: 1700, way: 400 });
    for (let k = 0; k < CIRCUITS; k++) {
      const dice = new Dice(SEED + k);
      const { circuit, command } = randomCircuit(dice);
      const { rest } = new Settling(circuit, command).settle(circuit.valves.map(() => 0));
      if (!rest) continue;
      const doubt = (its: Partial<typeof rest>) => restDoubt(circuit, command, { ...rest, ...its });
      expect(doubt({}), `case ${k}`).toBeUndefined();
      if (rest.ways.length > 0) {
        expect(doubt({ ways: rest.ways.slice(1) }), `case ${k}: a way less`).toBeDefined();
        tally.met('way');
      }
      for (const [line, now] of rest.lines) {
        if (now.state !== 'fed' && now.state !== 'drained') continue;
        const state = now.state === 'fed' ? 'drained' : 'fed';
        const lines = new Map(rest.lines).set(line, { ...now, state });
        expect(doubt({ lines }), `case ${k}, ${line}: ${state}`).toBeDefined();
        tally.met('line');
      }
      circuit.valves.forEach(({ positions, name }, i) => {
        if (rest.unsure.includes(name)) return;
        const other = rest.stand[i] === 0 ? positions.length - 1 : 0;
        const { lines, ways } = new Settling(circuit, command).at(rest.stand.with(i, other));
        const moved = { stand: rest.stand.with(i, other), lines, ways };
        const wants = new Settling(circuit, command).wants(moved.stand).moves;
        if (wants.length === 0) return;
        expect(doubt(moved), `case ${k}: ${name} moved`).toBeDefined();
        tally.met('valve');
      });
    }
    tally.enough();
  });
});

function stateOf({ lines }: Potentials, line: string): LineState {
  const has = lines.get(line);
  if (has === undefined) return 'shut in';
  if (has > 0.999) return 'fed';
  return has < 0.001 ? 'drained' : 'between';
}

/** Every end of every order of moves, by potentials; undefined where an open way meets the exhaust. */
function everyEnd(
  valves: readonly Valve[],
  solve: (stand: readonly number[]) => Potentials,
): { rests: string[]; endless: boolean } | undefined {
  const rests = new Set<string>();
  const state = new Map<string, 'open' | 'done'>();
  let [endless, isShort] = [false, false];
  const visit = (stand: readonly number[]): void => {
    const key = String(stand);
    if (state.get(key) === 'open') endless = true;
    if (state.has(key)) return;
    state.set(key, 'open');
    const its = solve(stand);
    isShort ||= its.isShort;
    const next = valves.map((valve, i) => steps(valve, stand[i] as number, its));
    if (next.every((step) => step === 0)) rests.add(key);
    next.forEach((step, i) => {
      if (step !== 0) visit(stand.with(i, (stand[i] as number) + step));
    });
    state.set(key, 'done');
  };
  visit(valves.map(() => 0));
  return isShort ? undefined : { rests: [...rests], endless };
}

function steps(valve: Valve, at: number, peer: Potentials): number {
  // A line between two orifices may have anything from nothing to all: at its worst and at its best.
  const [worst, best] = ([0, 1] as const).map((end) => {
    let net = 0;
    for (const { line, to, area, in: only } of valve.pushes) {
      if (only !== undefined && only !== at) continue;
      const state = stateOf(peer, line);
      const has = state === 'fed' ? 1 : state === 'between' ? (to === 'away' ? end : 1 - end) : 0;
      net += (to === 'away' ? 1 : -1) * has * toNumber(area);
    }
    const last = valve.positions.length - 1;
    const clear = Math.abs(net) < 1e-9 ? 0 : net;
    if (valve.stays) return clear > 0 && at < last ? 1 : clear < 0 && at > 0 ? -1 : 0;
    const [ahead, behind] = [valve.springs[at], valve.springs[at - 1]];
    if (at < last && ahead && clear > toNumber(ahead) + 1e-9) return 1;
    return at > 0 && behind && clear <= toNumber(behind) + 1e-9 ? -1 : 0;
  }) as [number, number];
  return worst === best ? worst : 0;
}
