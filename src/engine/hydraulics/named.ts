import { EXHAUST, PUMP } from './circuit.ts';
import { circuitOf, type Controls } from './controls.ts';

/**
 * Whatever of the controls has a name of its own, each once: solenoids, valves, balls, orifices,
 * accumulators, taps and lines. The pump's line and the exhaust have none, a position is a range's.
 */
export function namedIn(controls: Controls): string[] {
  const { solenoids, valves, balls, orifices, accumulators, taps } = controls;
  const parts = [solenoids, valves, balls, orifices, accumulators, taps];
  const names = [...parts.flatMap((its) => [...(its?.keys() ?? [])]), ...linesOf(controls)];
  return [...new Set(names)].filter((name) => name !== PUMP && name !== EXHAUST);
}

function linesOf(controls: Controls): string[] {
  const circuit = circuitOf(controls);
  return [
    ...circuit.sources.map(({ line }) => line),
    ...circuit.selector.flatMap(({ feeds }) => feeds),
    ...circuit.solenoids.flatMap((its) => ('from' in its ? [its.from, its.line] : [its.line])),
    ...circuit.valves.flatMap(({ pushes }) => pushes.map(({ line }) => line)),
    ...circuit.valves.flatMap(({ positions }) => positions.flat(2)),
    ...circuit.passages.flatMap(({ from, to }) => [from, to]),
    ...circuit.servos.flatMap(({ chambers }) => chambers.map(({ line }) => line)),
    ...(controls.accumulators?.values() ?? []),
    ...(controls.taps?.values() ?? []),
  ];
}
