import { compare, type Rational, ZERO } from '../linear/index.ts';
import { EXHAUST } from './circuit.ts';
import type { WayNow } from './ways.ts';

/**
 * `fed` at its pressure; `low`: fed, but leaking; `between`: through orifices from both sides;
 * `drained`; `shut in`: neither fed nor drained, so it keeps what it has for a while and then has
 * none; `short`: open to a source and to the exhaust at once.
 */
export type LineState = 'fed' | 'low' | 'between' | 'drained' | 'shut in' | 'short';

export interface LineNow {
  readonly state: LineState;
  /** The pressure, and the least that it may be: the same, but where nobody can say. */
  readonly most: Rational;
  readonly least: Rational;
  /** The way by which oil comes; absent: a source, or none comes. */
  readonly comes?: WayNow;
  /** The way by which it goes towards the exhaust; absent: none does. */
  readonly goes?: WayNow;
}

/** The ways of now by the line that they lead from, both ends of each. */
type Reached = Map<string, { readonly pressure: Rational; readonly by?: WayNow }>;

/**
 * What each line has, given the ways that stand open (design section 6). An open way has no
 * resistance beside an orifice, so what hangs openly on a source is at its pressure, what hangs
 * openly on the exhaust has none, and only what hangs on neither is a matter of orifices.
 */
export function linesNow(
  lines: Iterable<string>,
  ways: readonly WayNow[],
  sources: ReadonlyMap<string, Rational>,
): Map<string, LineNow> {
  const open = ways.filter(({ size }) => size === 'open');
  const fed = fedBy(open, new Map([...sources].map(([line, pressure]) => [line, { pressure }])));
  const drained = drainedBy(open, new Map([[EXHAUST, { pressure: ZERO }]]));
  // Through orifices, and never on through what an open way has settled.
  const settled = (line: string) => fed.has(line) || drained.has(line);
  const slowlyFed = fedBy(ways, fed, settled);
  const slowlyDrained = drainedBy(ways, drained, settled);
  const leaking = leaksOf(ways, fed, drained);
  const now = new Map<string, LineNow>();
  for (const line of lines) {
    if (line === EXHAUST) continue;
    const its = fed.get(line);
    const out = drained.get(line);
    if (its || out) now.set(line, lineAt(leaking.has(line), its, out));
    else now.set(line, lineAt(undefined, slowlyFed.get(line), slowlyDrained.get(line)));
  }
  return now;
}

type Reach = ReturnType<Reached['get']>;

// `leaking` is undefined of a line that hangs on orifices alone.
function lineAt(leaking: boolean | undefined, its: Reach, out: Reach): LineNow {
  const ways = { ...(its?.by && { comes: its.by }), ...(out?.by && { goes: out.by }) };
  const nothing = { least: ZERO, most: ZERO, ...ways };
  if (!its) return { state: out ? 'drained' : 'shut in', ...nothing };
  const most = its.pressure;
  if (out) return { state: leaking === undefined ? 'between' : 'short', ...nothing, most };
  return { state: leaking ? 'low' : 'fed', least: leaking ? ZERO : most, most, ...ways };
}

// The highest pressure that comes to each line; a way passes no more than its own most.
function fedBy(
  ways: readonly WayNow[],
  from: Reached,
  stops: (line: string) => boolean = () => false,
): Reached {
  const ahead = byEnd(ways, (way) => [
    [way.from, way.to],
    ...(way.oneWay ? [] : [[way.to, way.from] as const]),
  ]);
  const reached: Reached = new Map(from);
  const open = [...from.keys()];
  for (let at = open.shift(); at !== undefined; at = open.shift()) {
    const { pressure } = reached.get(at) as { pressure: Rational };
    for (const { end, way } of ahead.get(at) ?? []) {
      if (end === EXHAUST || stops(end)) continue;
      const gets = way.most && compare(way.most, pressure) < 0 ? way.most : pressure;
      const had = reached.get(end);
      if (had && compare(had.pressure, gets) >= 0) continue;
      reached.set(end, { pressure: gets, by: way });
      open.push(end);
    }
  }
  return reached;
}

// Whatever oil can leave towards the exhaust.
function drainedBy(
  ways: readonly WayNow[],
  from: Reached,
  stops: (line: string) => boolean = () => false,
): Reached {
  const behind = byEnd(ways, (way) => [
    [way.to, way.from],
    ...(way.oneWay ? [] : [[way.from, way.to] as const]),
  ]);
  const reached: Reached = new Map(from);
  const open = [...from.keys()];
  for (let at = open.shift(); at !== undefined; at = open.shift()) {
    for (const { end, way } of behind.get(at) ?? []) {
      if (reached.has(end) || stops(end)) continue;
      reached.set(end, { pressure: ZERO, by: way });
      open.push(end);
    }
  }
  return reached;
}

// Fed lines that leak or are short of pressure, and all that is fed through them.
function leaksOf(ways: readonly WayNow[], fed: Reached, drained: Reached): ReadonlySet<string> {
  const leaking = new Set([...fed.keys()].filter((line) => drained.has(line)));
  for (const { size, from } of ways) if (size === 'leak' && fed.has(from)) leaking.add(from);
  if (leaking.size === 0) return leaking;
  for (const line of fed.keys()) {
    for (let at: string | undefined = line; at !== undefined; at = comesFrom(at, fed)) {
      if (!leaking.has(at)) continue;
      leaking.add(line);
      break;
    }
  }
  return leaking;
}

function comesFrom(line: string, fed: Reached): string | undefined {
  const by = fed.get(line)?.by;
  if (!by) return undefined;
  return by.to === line ? by.from : by.to;
}

function byEnd(
  ways: readonly WayNow[],
  ends: (way: WayNow) => readonly (readonly [at: string, end: string])[],
): Map<string, { readonly end: string; readonly way: WayNow }[]> {
  const all = new Map<string, { readonly end: string; readonly way: WayNow }[]>();
  for (const way of ways) {
    for (const [at, end] of ends(way)) {
      const its = all.get(at);
      if (its) its.push({ end, way });
      else all.set(at, [{ end, way }]);
    }
  }
  return all;
}
