import type { Rational } from '../linear/index.ts';

/** What the pump feeds at line pressure, and where oil goes that has done its work. */
export const PUMP = 'pump';
export const EXHAUST = 'exhaust';

/**
 * A valve body as a person describes it: what may join which line to which, and what moves it.
 * Plain read-only data: a fault makes a new circuit. Lines have names; `pump` is the line that the
 * regulator keeps at pressure, `exhaust` the sump. Pressures are in kPa, areas in mm², or, where a
 * circuit gives none, both in parts of the pump's.
 */
export interface Circuit {
  readonly selector: readonly Position[];
  readonly solenoids: readonly Solenoid[];
  readonly valves: readonly Valve[];
  /** Ways that stand open whatever moves: drillings, orifices, one-way balls. */
  readonly passages: readonly Passage[];
  readonly servos: readonly Servo[];
  readonly sources: readonly Source[];
}

/** The selector (manual valve): every line that it feeds in some position it drains in the others. */
export interface Position {
  readonly name: string;
  readonly feeds: readonly string[];
}

/**
 * `bleeds`: open, it drains `line`; `feeds`: open, it joins `from` to `line`; `switches`: high, it
 * joins `from` to `line`, low, it drains `line`.
 */
export type Solenoid = {
  readonly name: string;
  readonly line: string;
  /** Set by faults: whatever the current does. */
  readonly stuck?: 'open' | 'closed';
} & (
  | { readonly does: 'bleeds'; readonly normally: 'open' | 'closed' }
  | { readonly does: 'feeds'; readonly from: string; readonly normally: 'open' | 'closed' }
  | { readonly does: 'switches'; readonly from: string; readonly normally: 'high' | 'low' }
);

/**
 * A spool. It stands in the last of its positions whose spring the oil beats: `springs[i]` is what
 * keeps it from going on to position i + 1 (kPa·mm², or kPa where areas are bare numbers). A spring
 * of 0 yields to any oil, and pushes back where oil is even; without springs (`stays`) an even push
 * leaves it where it is, as a ball between two seats.
 */
export interface Valve {
  readonly name: string;
  readonly positions: readonly (readonly Joined[])[];
  readonly springs: readonly Rational[];
  readonly stays?: true;
  readonly pushes: readonly Push[];
  /** Set by faults: the position that it never leaves. */
  readonly stuck?: number;
}

/** Two lines that a position joins. */
export type Joined = readonly [string, string];

/** Oil on an end or a land: `away` from the first position, or `back` to it. */
export interface Push {
  readonly line: string;
  readonly to: 'away' | 'back';
  readonly area: Rational;
  /** Only while the valve stands in this position: a land that its own stroke covers. */
  readonly in?: number;
}

export interface Passage {
  /** Absent: a fault made it. */
  readonly name?: string;
  readonly from: string;
  readonly to: string;
  readonly size: 'open' | 'orifice' | 'leak';
  /** A ball: oil passes from `from` to `to` and never back. */
  readonly oneWay?: true;
}

/** What applies a device, and what takes it off: chambers, each with its line. */
export interface Servo {
  readonly device: string;
  readonly chambers: readonly Chamber[];
  /** Of a device with both sides fed and no areas; absent: the release side. */
  readonly wins?: Side;
}

export type Side = 'applies' | 'releases';

export interface Chamber {
  readonly side: Side;
  readonly line: string;
  /** Absent: not known. */
  readonly area?: Rational;
}

/** A line with a pressure of its own: the pump's, a governor's, a throttle valve's. */
export interface Source {
  readonly line: string;
  readonly pressure: Rational;
}

/** What the circuit is told: the selector, which solenoids have current, the pressures of now. */
export interface Command {
  readonly position: string;
  /** Solenoids with current; of a pressure-controlling one, how much its line gets at most. */
  readonly current: ReadonlyMap<string, Rational | 'on'>;
  /** Pressures that are not the circuit's own now. */
  readonly pressures: ReadonlyMap<string, Rational>;
}

/** What is asked of a circuit in each gear: its command, by the names of range and gear. */
export interface Call {
  readonly range: string;
  readonly gear: string;
  readonly command: Command;
}
