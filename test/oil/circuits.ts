import type { Circuit, Command, Passage, Valve } from '../../src/engine/hydraulics/index.ts';
import { fraction, ONE, ZERO } from '../../src/engine/linear/index.ts';
import type { Dice } from '../dice.ts';

/** A circuit of chance: a few lines, valves that push each other, solenoids, balls and orifices. */
export function randomCircuit(dice: Dice): { circuit: Circuit; command: Command; names: string[] } {
  const lines = Array.from({ length: dice.whole(3, 7) }, (_, i) => `line ${i}`);
  const names = ['pump', 'exhaust', ...lines];
  // Most lines are either given oil by open ways, or hang on an orifice and are bled: else nearly every
  // circuit would lead the pump straight to the exhaust.
  const half = Math.ceil(lines.length / 2);
  const [given, bled] = [lines.slice(0, half), lines.slice(half)];
  const wild = () => dice.chance(0.04);
  const line = () => dice.pick(lines);
  const drained = () => dice.pick(wild() ? lines : bled);
  const pair = () => dice.several(['pump', ...lines], 2) as [string, string];
  const position = () =>
    Array.from({ length: dice.whole(0, 2) }, () => {
      if (dice.chance(0.4)) return [drained(), 'exhaust'] as const;
      if (wild()) return pair();
      return ['pump', dice.pick(given)] as const;
    });
  const valve = (name: string): Valve => {
    const positions = Array.from({ length: dice.chance(0.15) ? 3 : 2 }, position);
    const springs = positions
      .slice(1)
      .map((_, i) => (dice.chance(0.6) && i === 0 ? ZERO : fraction(2 * i + 1, 2)));
    const pushes = Array.from({ length: dice.whole(1, 3) }, () => ({
      line: line(),
      to: dice.chance(0.7) ? ('away' as const) : ('back' as const),
      area: dice.chance(0.8) ? ONE : fraction(dice.whole(1, 5), 2),
      ...(dice.chance(0.15) && { in: dice.whole(0, 1) }),
    }));
    return { name, positions, springs, pushes, ...(dice.chance(0.15) && { stays: true as const }) };
  };
  const solenoid = (name: string) => {
    const its = { name, line: drained() };
    const normally = dice.chance(0.5) ? ('open' as const) : ('closed' as const);
    const level = dice.chance(0.5) ? ('high' as const) : ('low' as const);
    const from = dice.pick(['pump', ...lines.filter((other) => other !== its.line)]);
    return dice.pick([
      { ...its, does: 'bleeds' as const, normally },
      { ...its, does: 'feeds' as const, from, normally },
      { ...its, does: 'switches' as const, from, normally: level },
    ]);
  };
  const passage = (): Passage => {
    const [from, to] = pair();
    if (dice.chance(0.6)) return { from: 'pump', to: dice.pick(bled), size: 'orifice' };
    const size = dice.chance(0.7) ? 'orifice' : 'open';
    return { from, to, size, ...(dice.chance(0.25) && { oneWay: true as const }) };
  };
  const circuit: Circuit = {
    selector: [
      { name: 'D', feeds: dice.several(given, dice.whole(1, 3)) },
      { name: 'R', feeds: dice.several(bled, dice.whole(0, 1)) },
    ],
    solenoids: ['A', 'B'].slice(0, dice.whole(0, 2)).map(solenoid),
    valves: Array.from({ length: dice.whole(2, 5) }, (_, i) => valve(`valve ${i}`)),
    passages: Array.from({ length: dice.whole(0, 5) }, passage),
    servos: [],
    sources: [{ line: 'pump', pressure: ONE }],
  };
  const on = circuit.solenoids.filter(() => dice.chance(0.5));
  const current = new Map(on.map(({ name }) => [name, 'on' as const]));
  return { circuit, command: { position: 'D', current, pressures: new Map() }, names };
}
