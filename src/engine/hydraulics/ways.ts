import type { Rational } from '../linear/index.ts';
import { type Circuit, type Command, EXHAUST, PUMP, type Solenoid } from './circuit.ts';

/** A way that stands open now, and what makes it stand open. */
export interface WayNow {
  readonly from: string;
  readonly to: string;
  readonly size: 'open' | 'orifice' | 'leak';
  readonly oneWay: boolean;
  /** No more pressure than this gets through. */
  readonly most?: Rational;
  readonly by: By;
}

export type By =
  | { readonly what: 'passage'; readonly index: number }
  | { readonly what: 'selector'; readonly position: string }
  | { readonly what: 'solenoid'; readonly solenoid: string; readonly current: boolean }
  | { readonly what: 'valve'; readonly valve: string; readonly position: number };

/** Ways that no valve changes: of the selector's position, the solenoids and the drillings. */
export function fixedWays(circuit: Circuit, command: Command): WayNow[] {
  const { selector, solenoids, passages } = circuit;
  const ways: WayNow[] = passages.map(({ oneWay = false, from, to, size }, index) => {
    return { from, to, size, oneWay, by: { what: 'passage', index } };
  });
  const fed = selector.find(({ name }) => name === command.position)?.feeds ?? [];
  const by = { what: 'selector', position: command.position } as const;
  for (const line of new Set(selector.flatMap(({ feeds }) => feeds))) {
    ways.push(fed.includes(line) ? open(PUMP, line, by) : open(line, EXHAUST, by));
  }
  for (const solenoid of solenoids) ways.push(...solenoidWays(solenoid, command));
  return ways;
}

/** Ways of each valve, by its position. */
export function valveWays({ valves }: Circuit): (readonly (readonly WayNow[])[])[] {
  return valves.map(({ name: valve, positions }) => {
    return positions.map((joined, position) => {
      return joined.map(([a, b]) => open(a, b, { what: 'valve', valve, position }));
    });
  });
}

/** Whether a solenoid stands open (or high) now. */
function standsOpen({ stuck, normally }: Solenoid, current: boolean): boolean {
  if (stuck) return stuck === 'open';
  return (normally === 'open' || normally === 'high') !== current;
}

function solenoidWays(solenoid: Solenoid, { current }: Command): WayNow[] {
  const { name, line } = solenoid;
  const level = current.get(name);
  const by = { what: 'solenoid', solenoid: name, current: level !== undefined } as const;
  // A pressure that is asked for is given by a high outlet, whichever way current moves it.
  const asked = typeof level === 'object' && !solenoid.stuck;
  const isOpen = asked || standsOpen(solenoid, level !== undefined);
  if (solenoid.does === 'bleeds') return isOpen ? [open(line, EXHAUST, by)] : [];
  if (!isOpen) return solenoid.does === 'switches' ? [open(line, EXHAUST, by)] : [];
  const way = open(solenoid.from, line, by);
  return [asked ? { ...way, most: level } : way];
}

function open(from: string, to: string, by: By): WayNow {
  return { from, to, size: 'open', oneWay: false, by };
}
