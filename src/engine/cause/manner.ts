import type { Fault } from '../faults/index.ts';
import type { OutcomeWord } from '../experience/index.ts';

/**
 * One of the manners in which a cause may be so, which the road can tell apart: how weak, worse
 * cold or hot, which way a band holds better, which gears of the lever are meant.
 */
export interface Manner {
  /** The place of its cause. */
  readonly cause: number;
  /** How often it is this manner, of the cause's manners together 1. */
  readonly share: number;
  readonly faults: readonly Fault[];
  readonly weak: readonly Weakness[];
  /** What is applied in place of what a gear applies, by gear. */
  readonly instead?: ReadonlyMap<string, readonly string[]>;
  /** What is so only while the oil is up, in some gears. */
  readonly fed?: { readonly faults: readonly Fault[]; readonly gears: ReadonlySet<string> };
  /** What a stall shows in whichever range, where something holds: engine and converter are the same. */
  readonly stalls?: OutcomeWord;
}

/** What is wrong with the train in a gear, the engine running. */
export function faultsIn({ faults, fed }: Manner, gear: string): readonly Fault[] {
  return fed?.gears.has(gear) ? fed.faults : faults;
}

/** A manner of one cause. */
export type Bare = Omit<Manner, 'cause'>;

/** What holds with a part of its strength. */
export interface Weakness {
  /** Absent: every device, for want of line pressure. */
  readonly device?: string;
  /** Which part of full load it holds, in the gear that asks most of it. */
  readonly strength: number;
  /** How the load is felt cold: below 1 it holds more. */
  readonly cold: number;
  /** What it can carry each way for what it carries in the gear that asks most of it. */
  readonly grip: DeviceGrip;
  /** Line pressure in reverse, times that of a forward gear. */
  readonly back: number;
  /** It takes the pressure of the others, which then hold this part of full load. */
  readonly starves?: number;
}

/** What a device can put on its first-named member, each way; only the proportions count. */
export interface DeviceGrip {
  readonly device: string;
  readonly clockwise: number;
  readonly anticlockwise: number;
}
