import type { Circuit, Command } from '../../src/engine/hydraulics/index.ts';

/**
 * A circuit as a network of resistances with numbers: an open way next to none, an orifice one, and
 * the pump at a pressure of 1. What a line has is read off its potential. Written for tests; shares no
 * code with the engine, and takes no caps and no sources beside the pump.
 */
export interface Potentials {
  /** Undefined where it hangs on nothing. */
  readonly lines: ReadonlyMap<string, number | undefined>;
  /** The pump drives far more through than any orifice lets by: an open way leads to the exhaust. */
  readonly isShort: boolean;
}

interface Edge {
  readonly from: string;
  readonly to: string;
  readonly conducts: number;
  readonly ball: boolean;
}

const OPEN = 1e5;
const ORIFICE = 1;
// What hangs on nothing is drawn by next to nothing to a potential that nothing else comes to.
const NEXT_TO_NOTHING = 1e-7;
const NOISE = 1e-10;
const DRAWN = 0.02;

export function potentials(
  circuit: Circuit,
  command: Command,
  stand: readonly number[],
  names: readonly string[],
): Potentials {
  const edges = edgesOf(circuit, command, stand);
  const balls = edges.filter(({ ball }) => ball);
  // Every way in which the balls may sit, until one agrees with the pressures that it makes.
  for (let sits = 0; sits < 2 ** balls.length; sits++) {
    const isShut = (edge: Edge) => edge.ball && ((sits >> balls.indexOf(edge)) & 1) === 1;
    const standing = edges.filter((edge) => !isShut(edge));
    const at = solved(names, standing);
    const agrees = balls.every((ball) => {
      const drop = (at.get(ball.from) as number) - (at.get(ball.to) as number);
      return isShut(ball) ? drop <= NOISE : drop * ball.conducts >= -NOISE;
    });
    if (!agrees) continue;
    const flow = standing.reduce((sum, { from, to, conducts }) => {
      if (from !== 'pump' && to !== 'pump') return sum;
      return sum + Math.abs((at.get(from) as number) - (at.get(to) as number)) * conducts;
    }, 0);
    // What goes along hangs on nothing; a ball lets a higher pressure in, and none out.
    const lines = new Map(
      [...at].map(([name, has]) => [name, Math.abs(has - DRAWN) < 1e-3 ? undefined : has]),
    );
    return { lines, isShort: flow > 1e3 };
  }
  throw new Error('no way for the balls to sit');
}

function edgesOf(
  circuit: Circuit,
  { position, current }: Command,
  stand: readonly number[],
): Edge[] {
  const open = (from: string, to: string): Edge => ({ from, to, conducts: OPEN, ball: false });
  const edges: Edge[] = circuit.passages.map(({ from, to, size, oneWay = false }) => {
    return { from, to, conducts: size === 'open' ? OPEN : ORIFICE, ball: oneWay };
  });
  const all = new Set(circuit.selector.flatMap(({ feeds }) => feeds));
  const fed = circuit.selector.find(({ name }) => name === position)?.feeds ?? [];
  for (const line of all)
    edges.push(fed.includes(line) ? open('pump', line) : open(line, 'exhaust'));
  for (const its of circuit.solenoids) {
    const energised = current.has(its.name);
    if (its.does === 'bleeds') {
      if ((its.normally === 'open') !== energised) edges.push(open(its.line, 'exhaust'));
    } else if (its.does === 'feeds') {
      if ((its.normally === 'open') !== energised) edges.push(open(its.from, its.line));
    } else {
      const high = (its.normally === 'high') !== energised;
      edges.push(high ? open(its.from, its.line) : open(its.line, 'exhaust'));
    }
  }
  circuit.valves.forEach(({ positions }, i) => {
    for (const [a, b] of positions[stand[i] as number] ?? []) edges.push(open(a, b));
  });
  return edges;
}

// Kirchhoff's law at each line but the pump (1) and the exhaust (0), by elimination.
function solved(names: readonly string[], edges: readonly Edge[]): Map<string, number> {
  const free = names.filter((name) => name !== 'pump' && name !== 'exhaust');
  const at = new Map(free.map((name, i) => [name, i]));
  const rows = free.map((_, i) => {
    const row = Array.from({ length: free.length + 1 }, () => 0);
    row[i] = NEXT_TO_NOTHING;
    row[free.length] = NEXT_TO_NOTHING * DRAWN;
    return row;
  });
  const fixed = (name: string) => (name === 'pump' ? 1 : 0);
  for (const { from, to, conducts } of edges) {
    for (const [one, other] of [
      [from, to],
      [to, from],
    ] as const) {
      const i = at.get(one);
      if (i === undefined) continue;
      const row = rows[i] as number[];
      row[i] = (row[i] as number) + conducts;
      const j = at.get(other);
      if (j === undefined)
        row[free.length] = (row[free.length] as number) + conducts * fixed(other);
      else row[j] = (row[j] as number) - conducts;
    }
  }
  const found = eliminated(rows);
  return new Map([
    ['pump', 1],
    ['exhaust', 0],
    ...free.map((name, i) => [name, found[i] as number] as const),
  ]);
}

function eliminated(rows: number[][]): number[] {
  const size = rows.length;
  for (let k = 0; k < size; k++) {
    let best = k;
    for (let i = k + 1; i < size; i++) {
      if (Math.abs(rows[i]?.[k] ?? 0) > Math.abs(rows[best]?.[k] ?? 0)) best = i;
    }
    const pivot = rows[best] as number[];
    rows[best] = rows[k] as number[];
    rows[k] = pivot;
    for (let i = 0; i < size; i++) {
      const row = rows[i] as number[];
      const times = (row[k] as number) / (pivot[k] as number);
      if (i === k || times === 0) continue;
      for (let j = k; j <= size; j++) row[j] = (row[j] as number) - times * (pivot[j] as number);
    }
  }
  return rows.map((row, i) => (row[size] as number) / (row[i] as number));
}
