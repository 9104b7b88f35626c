import { type DeviceWork, drive, isSpan, type Quantity, type Working } from '../flow/index.ts';
import { minus, signOf, ZERO } from '../linear/index.ts';
import { isZero } from '../reckon/index.ts';
import { assemble, CASE, type MemberName, setGearing, type Train } from '../train/index.ts';

/** What can growl: planets on their pins, a gear pair, a member in the case, one race on another. */
export type PartAtWork =
  | { readonly part: 'planets'; readonly set: string }
  | { readonly part: 'pair'; readonly pair: string }
  | { readonly part: 'bearing'; readonly member: MemberName }
  | { readonly part: 'races'; readonly device: string };

/** What a part does in a gear under power. */
export interface AtWork {
  /** Within itself: planets on pins, wheels in mesh, a member in the case. `free`: nothing settles it. */
  readonly turns: 'yes' | 'no' | 'free';
  /** Whether it passes torque; a bearing's load is not told. */
  readonly loaded: boolean;
}

/** All of a train that can growl, in the order of the file. */
export function partsOf(train: Train): PartAtWork[] {
  const { bodies, onPins } = assemble(train);
  const clutches = train.devices.filter(({ kind }) => kind === 'one-way');
  const turning = bodies.filter((_, body) => body !== 0 && !onPins.has(body));
  return [
    ...train.sets.map(({ name: set }): PartAtWork => ({ part: 'planets', set })),
    ...train.pairs.map(({ name: pair }): PartAtWork => ({ part: 'pair', pair })),
    ...clutches.map(({ name: device }): PartAtWork => ({ part: 'races', device })),
    ...turning.map(({ label: member }): PartAtWork => ({ part: 'bearing', member })),
  ];
}

/** Who of some parts turns, and who is loaded, with the friction devices `on`. */
export function atWork(
  train: Train,
  on: readonly string[],
  parts: readonly PartAtWork[] = partsOf(train),
): ReadonlyMap<PartAtWork, AtWork> {
  const working = drive(train, on);
  return new Map(parts.map((part) => [part, workOf(train, part, working)]));
}

function workOf(train: Train, part: PartAtWork, { speeds, meshes, devices }: Working): AtWork {
  const speed = (member: MemberName) => speeds.get(member) ?? ZERO;
  const pushed = (name: string) => {
    return meshes.some(({ within, onA }) => within === name && !isZero(onA));
  };
  switch (part.part) {
    case 'planets': {
      const [first, ...others] = coaxial(train, part.set);
      const turns = others.map((other) => differ(speed(first ?? CASE), speed(other)));
      return { turns: most(turns), loaded: pushed(part.set) };
    }
    case 'pair': {
      const driver = train.pairs.find(({ name }) => name === part.pair)?.driver.member ?? CASE;
      return { turns: differ(speed(driver), ZERO), loaded: pushed(part.pair) };
    }
    case 'races': {
      const { slip, torque } = devices.get(part.device) as DeviceWork;
      return { turns: differ(slip, ZERO), loaded: !isZero(torque) };
    }
    case 'bearing':
      return { turns: differ(speed(part.member), ZERO), loaded: false };
  }
}

// The members of a set that turn about the main axis; of shared planets, the carrier's too.
function coaxial(train: Train, name: string): MemberName[] {
  const set = train.sets.find((its) => its.name === name);
  if (!set) return [];
  const { members, planets } = setGearing(train, set);
  const onPins = new Set(planets.map(({ member }) => member));
  return members.filter((member) => !onPins.has(member));
}

// Two speeds that nothing settles may turn together or not.
function differ(a: Quantity, b: Quantity): AtWork['turns'] {
  if (isSpan(a) || isSpan(b)) return 'free';
  return signOf(minus(a, b)) === 0 ? 'no' : 'yes';
}

function most(turns: readonly AtWork['turns'][]): AtWork['turns'] {
  return turns.includes('yes') ? 'yes' : turns.includes('free') ? 'free' : 'no';
}
