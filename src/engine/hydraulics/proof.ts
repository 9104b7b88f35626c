import {
  compare,
  equal,
  minus,
  plus,
  type Rational,
  signOf,
  times,
  ZERO,
} from '../linear/index.ts';
import { type Circuit, type Command, EXHAUST, type Solenoid, type Valve } from './circuit.ts';
import type { LineNow } from './lines.ts';
import type { Rest } from './settle.ts';
import type { WayNow } from './ways.ts';

/** Throws where a rest is none: says which line, way or valve is not as it says. */
export function proveRest(circuit: Circuit, command: Command, rest: Rest): void {
  const doubt = restDoubt(circuit, command, rest);
  if (doubt !== undefined) throw new Error(`an answer failed its check: ${doubt}`);
}

/**
 * Why a rest is not proved by what it carries, or undefined if it is. Walks the ways that it names
 * and looks at each once: uses nothing of what found it.
 */
export function restDoubt(circuit: Circuit, command: Command, rest: Rest): string | undefined {
  return (
    waysDoubt(circuit, command, rest) ??
    chainDoubt(circuit, command, rest) ??
    closureDoubt(rest) ??
    forcesDoubt(circuit, rest)
  );
}

// As many ways stand open as the parts allow, each of them allowed.
function waysDoubt(circuit: Circuit, command: Command, { stand, ways }: Rest): string | undefined {
  const { selector, solenoids, valves, passages } = circuit;
  const inSelector = new Set(selector.flatMap(({ feeds }) => feeds));
  const joined = valves.map(({ positions }, i) => positions[stand[i] as number] ?? []);
  const through = solenoids.filter((its) => its.does === 'switches' || isOpen(its, command));
  const count = passages.length + inSelector.size + through.length + joined.flat().length;
  if (ways.length !== count) return `${ways.length} ways stand open, not ${count}`;
  const wrong = ways.find((way) => !isAllowed(way));
  return wrong && `${wrong.from} is not open to ${wrong.to}`;

  function isAllowed({ from, to, size, by }: WayNow): boolean {
    if (by.what === 'passage') {
      const its = passages[by.index];
      return its?.from === from && its.to === to && its.size === size;
    }
    if (by.what === 'selector') {
      const feeds = selector.find(({ name }) => name === command.position)?.feeds ?? [];
      return to === EXHAUST ? !feeds.includes(from) : feeds.includes(to);
    }
    if (by.what === 'valve') {
      const index = valves.findIndex(({ name }) => name === by.valve);
      return (joined[index] ?? []).some(([a, b]) => a === from && b === to);
    }
    const its = solenoids.find(({ name }) => name === by.solenoid);
    if (!its) return false;
    const high = isOpen(its, command);
    if (its.does === 'bleeds') return from === its.line && to === EXHAUST && high;
    return high ? from === its.from && to === its.line : from === its.line && to === EXHAUST;
  }
}

function isOpen({ name, normally, stuck }: Solenoid, { current }: Command): boolean {
  if (stuck !== undefined) return stuck === 'open';
  const level = current.get(name);
  if (typeof level === 'object') return true;
  const atRest = normally === 'open' || normally === 'high';
  return level === 'on' ? !atRest : atRest;
}

// By the way that each line names oil comes from one that has as much, and so on to a source; or it
// goes on to the exhaust.
function chainDoubt(circuit: Circuit, command: Command, { lines, ways }: Rest): string | undefined {
  const source = new Map(circuit.sources.map(({ line, pressure }) => [line, pressure]));
  for (const [line, pressure] of command.pressures) source.set(line, pressure);
  for (const [line, now] of lines) {
    const { state, most, least } = now;
    const isFed = state !== 'drained' && state !== 'shut in';
    // A line between drains too, or a ball alone feeds it, from a line that does.
    const isHalved = state === 'between' && now.goes === undefined;
    const isDrained = ['drained', 'between', 'short'].includes(state) && !isHalved;
    if (isHalved && originState(line, lines) !== 'between') return `${line} is between nothing`;
    const passed = isFed ? followed(line, 'comes', lines, ways) : [];
    if (typeof passed === 'string') return passed;
    const first = passed.at(-1);
    const has = first === undefined ? undefined : source.get(first);
    if (isFed && !has) return `${line} hangs in the air`;
    if (has && compare(most, has) > 0) return `${line} has more than its source`;
    if (state === 'fed' && !equal(most, least)) return `${line} is fed at two pressures`;
    if (!isFed && signOf(most) > 0) return `${line} has pressure and no oil`;
    const left = isDrained ? followed(line, 'goes', lines, ways) : [];
    if (typeof left === 'string') return left;
    if (isDrained && left.at(-1) !== EXHAUST) return `${line} does not drain`;
  }
  return undefined;
}

function originState(line: string, lines: ReadonlyMap<string, LineNow>) {
  const way = lines.get(line)?.comes;
  if (!way) return undefined;
  return lines.get(way.to === line ? way.from : way.to)?.state;
}

// The lines that oil comes or goes by, the line itself first; words where the way is none.
function followed(
  line: string,
  which: 'comes' | 'goes',
  lines: ReadonlyMap<string, LineNow>,
  ways: readonly WayNow[],
): readonly string[] | string {
  const passed = [line];
  for (let at = line; ;) {
    const way = lines.get(at)?.[which];
    if (!way) return passed;
    if (!ways.includes(way)) return `${at} names a way that does not stand open`;
    const uphill = which === 'comes' ? way.from === at : way.to === at;
    if (way.oneWay && uphill) return `${at} names a ball that is shut`;
    at = way.to === at ? way.from : way.to;
    if (passed.includes(at)) return `${line} leads back to itself`;
    passed.push(at);
    if (at === EXHAUST) return passed;
  }
}

// No way is overlooked: what it leads to has what it brings, and loses what it takes.
function closureDoubt({ lines, ways }: Rest): string | undefined {
  const fed = openly('comes', lines);
  const drained = openly('goes', lines);
  for (const way of ways) {
    const back = [way.to, way.from] as const;
    for (const [from, to] of [[way.from, way.to] as const, ...(way.oneWay ? [] : [back])]) {
      const brings = lines.get(from);
      const gets = lines.get(to);
      if (way.size === 'open') {
        if (gets && brings && fed(from)) {
          const lets = way.most && compare(way.most, brings.most) < 0 ? way.most : brings.most;
          if (!fed(to)) return `${to} is open to ${from} and has no oil`;
          if (compare(gets.most, lets) < 0) return `${to} has less than ${from}`;
        }
        if (drained(to) && !drained(from)) return `${from} is open to ${to} and not drained`;
      } else {
        const hangs = (line: string) => !fed(line) && !drained(line);
        if (gets && hangs(to) && gets.state !== 'fed' && gets.state !== 'between') {
          if (brings && (fed(from) || brings.state === 'between' || brings.state === 'fed')) {
            return `${to} is fed through an orifice`;
          }
        }
        if (brings && hangs(from) && brings.state !== 'drained' && brings.state !== 'between') {
          const { state } = lines.get(to) ?? { state: 'drained' };
          if (drained(to) || state === 'drained') {
            return `${from} is drained through an orifice`;
          }
        }
      }
    }
  }
  return undefined;
}

// Whether all the ways by which oil comes to a line, or goes, are open ones.
function openly(which: 'comes' | 'goes', lines: ReadonlyMap<string, LineNow>) {
  const empty = which === 'comes' ? ['drained', 'shut in'] : ['fed', 'low', 'shut in'];
  return (line: string): boolean => {
    for (let at = line; at !== EXHAUST;) {
      const now = lines.get(at);
      if (!now || empty.includes(now.state)) return false;
      const way = now[which];
      if (!way) return which === 'comes';
      if (way.size !== 'open') return false;
      at = way.to === at ? way.from : way.to;
    }
    return which === 'goes';
  };
}

// Each valve stands where its forces leave it.
function forcesDoubt({ valves }: Circuit, { stand, lines, unsure }: Rest): string | undefined {
  const wrong = valves.find((valve, i) => {
    const at = stand[i] as number;
    return valve.stuck === undefined ? !rests(valve, at, lines, unsure) : at !== valve.stuck;
  });
  return wrong && `${wrong.name} does not rest there`;
}

// A valve may be unsure only where the least and the most of its oil would send it different ways.
function rests(
  valve: Valve,
  at: number,
  lines: ReadonlyMap<string, LineNow>,
  unsure: readonly string[],
): boolean {
  const [low, high] = (['least', 'most'] as const).map((end) => {
    let net = ZERO;
    for (const push of valve.pushes) {
      if (push.in !== undefined && push.in !== at) continue;
      const opposite = end === 'least' ? 'most' : 'least';
      const has = lines.get(push.line)?.[push.to === 'away' ? end : opposite] ?? ZERO;
      const its: Rational = times(has, push.area);
      net = push.to === 'away' ? plus(net, its) : minus(net, its);
    }
    const last = valve.positions.length - 1;
    if (valve.stays) return signOf(net) > 0 && at < last ? 1 : signOf(net) < 0 && at > 0 ? -1 : 0;
    if (at < last && compare(net, valve.springs[at] as Rational) > 0) return 1;
    return at > 0 && compare(net, valve.springs[at - 1] as Rational) <= 0 ? -1 : 0;
  });
  return unsure.includes(valve.name) ? low !== high : low === 0 && high === 0;
}
