import { drive, isSpan, type Quantity, type Working } from '../flow/index.ts';
import { minus, signOf, ZERO } from '../linear/index.ts';
import { isZero } from '../reckon/index.ts';
import { assemble, CASE, type MemberName, setGearing, type Train } from '../train/index.ts';

/** What can growl: planets on their pins, a gear pair, a member in the case, one race on another. */
export type Part =
  | { readonly part: 'planets'; readonly set: string }
  | { readonly part: 'pair'; readonly pair: string }
  | { readonly part: 'bearing'; readonly member: MemberName }
  | { readonly part: 'races'; readonly device: string };

/** A part in a gear under power. */
export interface AtWork {
  readonly part: Part;
  /** Within itself: planets on pins, wheels in mesh, a member in the case. `free`: nothing settles it. */
  readonly turns: 'yes' | 'no' | 'free';
  /** Whether it passes torque; a bearing's load is not told. */
  readonly loaded: boolean;
}

/** Who turns, and who is loaded, with the friction devices `on`, in the order of the file. */
export function atWork(train: Train, on: readonly string[]): AtWork[] {
  const working = drive(train, on);
  const speed = (member: MemberName) =>
    member === CASE ? ZERO : (working.speeds.get(member) ?? ZERO);
  const pushed = (within: string) =>
    working.meshes.some((mesh) => mesh.within === within && !isZero(mesh.onA));
  const sets = train.sets.map((set): AtWork => {
    const [first, ...others] = coaxial(train, set.name);
    const turns = others.map((other) => differ(speed(first ?? CASE), speed(other)));
    return {
      part: { part: 'planets', set: set.name },
      turns: most(turns),
      loaded: pushed(set.name),
    };
  });
  const pairs = train.pairs.map(({ name, driver }): AtWork => {
    const turns = differ(speed(driver.member), ZERO);
    return { part: { part: 'pair', pair: name }, turns, loaded: pushed(name) };
  });
  return [...sets, ...pairs, ...races(train, working), ...bearings(train, speed)];
}

// The members of a set that turn about the main axis; of shared planets, the carrier's too.
function coaxial(train: Train, name: string): MemberName[] {
  const set = train.sets.find((its) => its.name === name);
  if (!set) return [];
  const { members, planets } = setGearing(train, set);
  const onPins = new Set(planets.map(({ member }) => member));
  return members.filter((member) => !onPins.has(member));
}

function races(train: Train, { devices }: Working): AtWork[] {
  return train.devices
    .filter(({ kind }) => kind === 'one-way')
    .flatMap(({ name }): AtWork[] => {
      const work = devices.get(name);
      if (!work) return [];
      const turns = differ(work.slip, ZERO);
      return [{ part: { part: 'races', device: name }, turns, loaded: !isZero(work.torque) }];
    });
}

function bearings(train: Train, speed: (member: MemberName) => Quantity): AtWork[] {
  const { bodies, onPins } = assemble(train);
  return bodies.flatMap(({ label }, body): AtWork[] => {
    if (body === 0 || onPins.has(body)) return [];
    const turns = differ(speed(label), ZERO);
    return [{ part: { part: 'bearing', member: label }, turns, loaded: false }];
  });
}

// Two speeds that nothing settles may turn together or not.
function differ(a: Quantity, b: Quantity): AtWork['turns'] {
  if (isSpan(a) || isSpan(b)) return 'free';
  return signOf(minus(a, b)) === 0 ? 'no' : 'yes';
}

function most(turns: readonly AtWork['turns'][]): AtWork['turns'] {
  return turns.includes('yes') ? 'yes' : turns.includes('free') ? 'free' : 'no';
}
