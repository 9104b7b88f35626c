import type { Way } from '../../engine/train/index.ts';
import type { Standing } from './scene.ts';

/** How everything stands in the answer that is shown; what is not named is drawn plain. */
export interface Standings {
  /** By body label. */
  readonly members: ReadonlyMap<string, MemberStanding>;
  /** By name. */
  readonly devices: ReadonlyMap<string, DeviceStanding>;
  /**
   * By body label: the sets, pairs, devices and ends that put a torque on it, and which way power
   * goes: 1 from the body to them, -1 to the body, 0 where none does.
   */
  readonly loads: ReadonlyMap<string, ReadonlyMap<string, number>>;
  /** Sets and gear pairs through which power goes round in a circle, by name. */
  readonly circling: ReadonlySet<string>;
  /** What stands at the foot of the sheet: which answer it is, and what its marks mean. */
  readonly key?: readonly string[];
}

export interface MemberStanding {
  readonly standing: Standing;
  /** The mark that says the same without weight or colour. */
  readonly mark: string;
  /** How it turns, seen from the input end; absent: it stands still, or nothing settles it. */
  readonly way?: Way;
  /** A line under the name: its torque or its speed, as the door words it. */
  readonly says?: string;
  /** The share of the power that goes through it, 0 to 1 and more where power circles. */
  readonly power?: number;
}

/** How a device stands in a picture. */
export interface DeviceStanding {
  readonly standing: Standing;
  readonly mark: string;
  readonly says?: string;
}
