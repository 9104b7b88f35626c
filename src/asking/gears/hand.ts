import { hand, type HandAnswer } from '../../engine/hand/index.ts';
import type { OneWayClutch, Train, Way } from '../../engine/train/index.ts';
import {
  type AsFound,
  type GearChoice,
  type Hands,
  handsOf,
  meant,
  NoAnswer,
  raceHeld,
  selectionOf,
  type Stand,
  standAt,
  trainAsFound,
  unknown,
} from '../request/index.ts';

/**
 * Hold some, turn one: one way, or both where none is named. With `oneWay`, the races of
 * one-way clutches by themselves, of which `hold` names one.
 */
export interface HandRequest extends AsFound, GearChoice, Hands {
  /** The name of a clutch; true for all. */
  readonly oneWay?: string | true;
  readonly seenFrom?: string;
}

export type HandReply = {
  readonly train: Train;
  readonly stand: Stand;
} & (
  | {
      readonly asked: 'hands';
      readonly answers: readonly { readonly way: Way; readonly answer: HandAnswer }[];
    }
  | {
      readonly asked: 'races';
      /** As the file describes them. */
      readonly clutches: readonly OneWayClutch[];
      /** The names of those that were found the other way up. */
      readonly turned: ReadonlySet<string>;
    }
);

export function askHand(file: Train, request: HandRequest): HandReply {
  const train = trainAsFound(file, request);
  const stand = standAt(train, request.seenFrom);
  if (request.oneWay !== undefined) return racesOf(train, request.oneWay, request, stand);
  const { hold, turn, ways } = handsOf(train, request, stand);
  const on = selectionOf(train, request)?.on ?? [];
  const answers = ways.map((way) => ({ way, answer: hand(train, { hold, turn, way, on }) }));
  return { train, stand, asked: 'hands', answers };
}

function racesOf(train: Train, name: string | true, request: HandRequest, stand: Stand): HandReply {
  const option = OF_HANDS.find((one) => request[one] !== undefined);
  if (option) throw new NoAnswer({ refused: 'bad.one-way', option });
  const held = raceHeld(stand, request.hold);
  const all = train.devices.filter((device): device is OneWayClutch => device.kind === 'one-way');
  const chosen = name === true ? all : [clutchOf(train, all, name)];
  const turned = new Set<string>();
  // A fault changes the unit, not what the file describes.
  const clutches = chosen.map((clutch): OneWayClutch => {
    const described = train.healthy?.devices.find((device) => device.name === clutch.name);
    if (described?.kind !== 'one-way' || described.lets === clutch.lets) return clutch;
    turned.add(clutch.name);
    return { ...clutch, lets: described.lets };
  });
  return { train, stand: held, asked: 'races', clutches, turned };
}

const OF_HANDS = ['turn', 'way', 'on', 'range', 'gear'] as const;

function clutchOf(train: Train, all: readonly OneWayClutch[], given: string): OneWayClutch {
  const names = all.map(({ name }) => name);
  const clutch = all.find(({ name }) => name === meant(given, names, train));
  if (!clutch) throw new NoAnswer({ refused: 'no.one-way', ...unknown(given, names) });
  return clutch;
}
