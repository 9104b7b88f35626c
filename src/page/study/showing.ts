import {
  coast,
  type DeviceWork,
  drive,
  type Fact,
  type Quantity,
  rollback,
  type Working,
} from '../../engine/flow/index.ts';
import type { HandAnswer } from '../../engine/hand/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import type { MemberName, Train } from '../../engine/train/index.ts';
import type { ByEngine, ByHand, TurnedBy } from './setting.ts';

/** What a build shows, whoever asked. Speeds are per turn of what is turned. */
export interface Showing {
  readonly setting: TurnedBy;
  readonly moves: boolean;
  /** Where a hand finds a lock: of those that it does not reach. */
  readonly speeds: ReadonlyMap<MemberName, Quantity>;
  /** One motion as floats, to draw. Empty where nothing moves. */
  readonly drawn: ReadonlyMap<MemberName, number>;
  /** What each device does, whoever turns. */
  readonly devices: ReadonlyMap<string, DeviceWork>;
  readonly facts: readonly Fact[];
  /** In a gear, under power or on coast: all that the engine says of it. */
  readonly working?: Working;
  /** By hand: what the hands find. */
  readonly found?: HandAnswer;
}

/** Only what is asked is worked out: the side of the gear that is shown. */
export function ofEngine(train: Train, on: readonly string[], setting: ByEngine): Showing {
  switch (setting.side) {
    case 'drive':
    case 'coast': {
      const working = setting.side === 'drive' ? drive(train, on) : coast(train, on);
      const { speeds, devices, facts } = working;
      const moves = working.state !== 'tied up';
      return { setting, moves, speeds, drawn: floats(working.drawn), devices, facts, working };
    }
    case 'rolled back':
    case 'rolled back, input held': {
      const { inputFree, inputHeld } = rollback(train, on);
      const found = setting.side === 'rolled back' ? inputFree : inputHeld;
      const { rolls, speeds, devices, facts } = found;
      return { setting, moves: rolls, speeds, drawn: floats(found.drawn), devices, facts };
    }
  }
}

export function ofHand(found: HandAnswer, setting: ByHand): Showing {
  const { turns, devices, facts } = found;
  const speeds = found.turns ? found.moves : found.loose;
  const drawn = found.turns ? floats(found.drawn) : new Map<MemberName, number>();
  return { setting, moves: turns, speeds, drawn, devices, facts, found };
}

function floats(drawn: Working['drawn']): ReadonlyMap<MemberName, number> {
  return new Map([...drawn].map(([member, speed]) => [member, toNumber(speed)]));
}
