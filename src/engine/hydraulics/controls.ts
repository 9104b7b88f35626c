import { fromNumber, ONE, type Rational, ZERO } from '../linear/index.ts';
import { quantityFrom } from '../quantity/index.ts';
import {
  type Call,
  type Circuit,
  type Joined,
  type Passage,
  PUMP,
  type Push,
  type Servo,
  type Solenoid,
  type Valve,
} from './circuit.ts';

/** What moves the devices, as it stands in a train file: names and texts, every part optional. */
export interface Controls {
  /** Lines with a pressure of their own; a pump that is not told is at 1, and so are areas. */
  readonly pressures?: ByName<string>;
  /** What each position of the selector feeds. */
  readonly selector?: ByName<readonly string[]>;
  readonly solenoids?: ByName<SolenoidEntry>;
  readonly valves?: ByName<ValveEntry>;
  readonly balls?: ByName<BallEntry>;
  readonly orifices?: ByName<{ readonly from: string; readonly to: string }>;
  readonly accumulators?: ByName<string>;
  /** The chambers of each device. */
  readonly oil?: ByName<ServoEntry>;
  /** Solenoids that have current in each gear. */
  readonly asks?: ByName<ByName<readonly string[]>>;
  /** Pressures that are others in a gear: of lines, and of pressure-controlling solenoids. */
  readonly 'pressures in'?: ByName<ByName<ByName<string>>>;
  /** Plugs where a gauge goes, each with its line. */
  readonly taps?: ByName<string>;
}

export type ByName<Its> = ReadonlyMap<string, Its>;

export type SolenoidEntry =
  | { readonly bleeds: string; readonly normally: 'open' | 'closed' }
  | { readonly feeds: string; readonly from: string; readonly normally: 'open' | 'closed' }
  | { readonly switches: string; readonly from: string; readonly normally: 'high' | 'low' };

export interface ValveEntry {
  /** Lines that push it away from its first position, and back to it. */
  readonly away?: readonly string[];
  readonly back?: readonly string[];
  /** Of lines that push on more or less than an area of 1. */
  readonly areas?: ByName<number>;
  /** What oil on an area of 1 must exceed to take it on from each position; absent: any oil does. */
  readonly springs?: readonly string[];
  /** In each position, which line each outlet is joined to. */
  readonly positions: readonly ByName<string>[];
}

/** A ball lets oil through one way; between two lines it shuts the one that has less. */
export interface BallEntry {
  readonly from: readonly string[];
  readonly to: string;
}

export interface ServoEntry {
  readonly applies?: readonly string[];
  readonly releases?: readonly string[];
  readonly areas?: ByName<number>;
  readonly wins?: 'applies' | 'releases';
}

/** The circuit of a train's controls. Throws where a pressure is none: a file's are looked at first. */
export function circuitOf(controls: Controls): Circuit {
  const { selector, solenoids, orifices, balls, oil, pressures = new Map() } = controls;
  const sources = [...pressures].map(([line, told]) => ({ line, pressure: kPa(told) }));
  if (!pressures.has(PUMP)) sources.unshift({ line: PUMP, pressure: ONE });
  return {
    selector: listOf(selector, (name, feeds) => ({ name, feeds })),
    solenoids: listOf(solenoids, solenoidOf),
    valves: [...listOf(controls.valves, valveOf), ...listOf(balls, seatsOf).flat()],
    passages: [
      ...listOf(orifices, (name, ends): Passage => ({ name, ...ends, size: 'orifice' })),
      ...listOf(balls, oneWayOf).flat(),
    ],
    servos: listOf(oil, servoOf),
    sources,
  };
}

/** What is asked in each gear of a range, in order. The position is the one of the range's name. */
export function callsOf(controls: Controls, range: string, gears: readonly string[]): Call[] {
  const asks = controls.asks?.get(range);
  const levels = controls['pressures in']?.get(range);
  return gears.map((gear) => {
    const now = [...(levels?.get(gear) ?? [])].map(([name, told]) => [name, kPa(told)] as const);
    const current = new Map<string, Rational | 'on'>();
    for (const name of asks?.get(gear) ?? []) current.set(name, 'on');
    for (const [name, level] of now) if (controls.solenoids?.has(name)) current.set(name, level);
    const pressures = new Map(now.filter(([name]) => !controls.solenoids?.has(name)));
    return { range, gear, command: { position: range, current, pressures } };
  });
}

function solenoidOf(name: string, its: SolenoidEntry): Solenoid {
  if ('bleeds' in its) return { name, line: its.bleeds, does: 'bleeds', normally: its.normally };
  const { from } = its;
  if ('feeds' in its) return { name, line: its.feeds, from, does: 'feeds', normally: its.normally };
  return { name, line: its.switches, from, does: 'switches', normally: its.normally };
}

function valveOf(name: string, its: ValveEntry): Valve {
  const { away = [], back = [], areas, springs = [], positions } = its;
  const push = (to: Push['to']) => (line: string) => ({ line, to, area: areaOf(areas, line) });
  return {
    name,
    positions: positions.map((joined) => [...joined]),
    springs: positions.slice(1).map((_, i) => (springs[i] === undefined ? ZERO : kPa(springs[i]))),
    pushes: [...away.map(push('away')), ...back.map(push('back'))],
  };
}

// A ball between two lines is a valve without a spring that each of them pushes towards the other.
function seatsOf(name: string, { from, to }: BallEntry): Valve[] {
  const [one, other] = from;
  if (one === undefined || other === undefined) return [];
  const seats: Joined[][] = [[[to, one]], [[to, other]]];
  const pushes: Push[] = [
    { line: one, to: 'back', area: ONE },
    { line: other, to: 'away', area: ONE },
  ];
  return [{ name, positions: seats, springs: [], pushes, stays: true }];
}

function oneWayOf(name: string, { from, to }: BallEntry): Passage[] {
  const [only, ...others] = from;
  if (only === undefined || others.length > 0) return [];
  return [{ name, from: only, to, size: 'open', oneWay: true }];
}

function servoOf(device: string, its: ServoEntry): Servo {
  const { applies = [], releases = [], areas, wins } = its;
  const chamber = (side: 'applies' | 'releases') => (line: string) => {
    const area = areas?.get(line);
    return { side, line, ...(area !== undefined && { area: fromNumber(area) }) };
  };
  const chambers = [...applies.map(chamber('applies')), ...releases.map(chamber('releases'))];
  return { device, chambers, ...(wins && { wins }) };
}

function areaOf(areas: ByName<number> | undefined, line: string): Rational {
  const area = areas?.get(line);
  return area === undefined ? ONE : fromNumber(area);
}

function kPa(told: string): Rational {
  const quantity = quantityFrom(told, 'pressure');
  if (!quantity) throw new RangeError(`no pressure: ${told}`);
  return quantity.size;
}

function listOf<In, Out>(
  entries: ByName<In> | undefined,
  build: (name: string, its: In) => Out,
): Out[] {
  return [...(entries ?? [])].map(([name, its]) => build(name, its));
}
