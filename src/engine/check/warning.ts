import type { Located } from '../yaml/index.ts';
import type { GeometryFinding } from '../teeth/index.ts';
import type { MemberName, Way } from '../train/index.ts';
import type { Mend } from './mend.ts';

/** What a train that can be read may have against it, with the place that it is about. */
export type Warning = Located<GeometryFinding | Misgiving>;

/** What only asking the train can show. */
export type Misgiving =
  /** Of so many odd gears, the one cause: changed as `Mend` says, nothing of the train is odd. */
  | ({ readonly problem: 'one cause'; readonly gears: number } & Mend)
  /** Only one thing touches the member (a set, a gear pair or a device): it can carry no load. */
  | {
      readonly problem: 'member carries nothing';
      readonly member: MemberName;
      readonly touched: string;
    }
  /** Nothing but the set touches any of its members. */
  | { readonly problem: 'set stands alone'; readonly set: string }
  /** The gears alone keep its members from turning against each other. */
  | { readonly problem: 'device does nothing'; readonly device: string }
  /** A friction device that no gear of the ranges applies. */
  | { readonly problem: 'device never applied'; readonly device: string }
  | { readonly problem: 'gear is neutral'; readonly range: string; readonly gear: string }
  | { readonly problem: 'gear ties up'; readonly range: string; readonly gear: string }
  /** The ranges and the oil of the controls do not apply the same: `does` is what the oil does. */
  | {
      readonly problem: 'oil differs';
      readonly range: string;
      readonly gear: string;
      readonly device: string;
      readonly does: 'applies' | 'leaves off';
    }
  /** Valves that chase each other, or whose order decides where they rest; or a pump that is short. */
  | {
      readonly problem: 'oil unsettled';
      readonly range: string;
      readonly gear: string;
      readonly is: 'chase' | 'race' | 'short';
    }
  /** Gears drive the output both ways, and the file does not say which is forward. */
  | { readonly problem: 'forward taken'; readonly way: Way }
  /** The file says which is forward, and most gears that drive go the other way. */
  | { readonly problem: 'forward against'; readonly way: Way }
  /** A gear or a range called N or P that drives. */
  | { readonly problem: 'neutral drives'; readonly range: string; readonly gear: string };
