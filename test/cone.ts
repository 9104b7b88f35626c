import { CASE, type GearSet, type MemberName, type Train } from '../src/engine/train/index.ts';

/** Σ times · (speed of a member), by member; the case turns at 0 and is left out. */
export type Terms = ReadonlyMap<MemberName, number>;

/** The lines of a train's motion cone: `level` ones are zero, `letting` ones never negative. */
export interface Cone {
  readonly names: readonly MemberName[];
  readonly level: readonly Terms[];
  readonly letting: readonly Terms[];
}

/**
 * The motion cone of `train` with some friction devices on, straight from its teeth: no line
 * of the engine's is used, so that a wrong sign there cannot hide here. Every name is a
 * member of its own and every join an equation; planets are told by the speed of their pitch
 * line in the carrier's frame, which is what all wheels in mesh have in common.
 *
 * Positive is clockwise, seen from the input end.
 */
export function coneOf(train: Train, on: readonly string[]): Cone {
  const level = [
    ...train.sets.flatMap((set) => setLines(train, set)),
    ...train.pairs.map(({ driver, driven, kind }) => {
      const sign = kind === 'external' ? 1 : -1;
      return terms([driver.member, driver.teeth], [driven.member, sign * driven.teeth]);
    }),
    ...train.joins.flatMap(({ name, members }) => members.map((member) => equal(name, member))),
  ];
  const letting: Terms[] = [];
  for (const device of train.devices) {
    const { first, second } = device;
    if (device.stuck !== undefined) throw new Error('this cone is of sound trains');
    if (device.kind === 'one-way') {
      const way = device.lets === 'clockwise' ? 1 : -1;
      letting.push(terms([first, way], [second, -way]));
    } else if (on.includes(device.name)) {
      level.push(equal(first, second));
    }
  }
  const named = [train.input, train.output, ...train.devices.flatMap((d) => [d.first, d.second])];
  const names = new Set([...named, ...[...level, ...letting].flatMap((line) => [...line.keys()])]);
  names.delete(CASE);
  return { names: [...names], level, letting };
}

/** Times × (a member's speed against the carrier's) for each wheel; `pitch` is the pitch line's. */
function setLines(train: Train, set: GearSet): Terms[] {
  if (set.stripped !== undefined) throw new Error('this cone is of sound trains');
  const part = (name: string) => `${set.name}.${name}`;
  const pitch = (of: string, step = 0) =>
    `${of} pitch line${step > 0 ? ' of the second step' : ''}`;
  /** The wheel's teeth times its speed in the carrier's frame are `sign` times the pitch line's. */
  const rolls = (wheel: string, teeth: number, line: string, sign: 1 | -1) =>
    terms([part(wheel), teeth], [part('carrier'), -teeth], [line, -sign]);
  const own = pitch(set.name);
  switch (set.kind) {
    case 'plain': {
      // An external mesh turns the planet against the sun; an internal one with the ring.
      const planet = set.planet ?? Math.floor((set.ring - set.sun) / 2);
      return [
        rolls('sun', set.sun, own, -1),
        rolls('planet', planet, own, 1),
        rolls('ring', set.ring, own, 1),
      ];
    }
    case 'pair': // the pitch line is the outer planet's; two external meshes from the sun
      return [rolls('sun', set.sun, own, 1), rolls('ring', set.ring, own, 1)];
    case 'stepped': {
      const second = pitch(set.name, 1);
      const [first, last] = set.steps;
      return [
        rolls('sun', set.sun, own, -1),
        rolls('planet', first, own, 1),
        terms([own, last], [second, -first]), // one body: pitch lines as the steps' teeth
        rolls('ring', set.ring, second, 1),
      ];
    }
    case 'sharing': {
      const owner = train.sets.find(({ name }) => name === set.shares);
      const near = pitch(set.shares);
      const far = owner?.kind === 'stepped' ? pitch(set.shares, 1) : near;
      return [
        equal(part('carrier'), `${set.shares}.carrier`),
        ...(set.sun ? [rolls('sun', set.sun, near, set.pairs === undefined ? -1 : 1)] : []),
        ...(set.ring ? [rolls('ring', set.ring, far, 1)] : []),
      ];
    }
    case 'wheels':
      return set.meshes.map(({ a, b, internal }) => {
        const [m, n] = [set.wheels.get(a) as number, set.wheels.get(b) as number];
        const second = internal ? -n : n;
        return terms([part(a), m], [part(b), second], [part('carrier'), -m - second]);
      });
    case 'bevel': {
      const [left, right] = set.sides;
      return [
        terms([part('left'), left], [part('right'), right], [part('carrier'), -left - right]),
      ];
    }
  }
}

function equal(a: MemberName, b: MemberName): Terms {
  return terms([a, 1], [b, -1]);
}

function terms(...parts: readonly (readonly [MemberName, number])[]): Terms {
  const sums = new Map<MemberName, number>();
  for (const [member, times] of parts) sums.set(member, (sums.get(member) ?? 0) + times);
  sums.delete(CASE);
  return sums;
}
