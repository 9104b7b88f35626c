import {
  assemble,
  CASE,
  type Device,
  type GearPair,
  type GearSet,
  isFriction,
  type Join,
  type MemberName,
  type Range,
  type Train,
  type Way,
} from '../src/engine/train/index.ts';
import { Dice } from './dice.ts';

/**
 * A train by chance, of sizes that are met on a bench; the same seed, the same train. It may
 * be tied up, in pieces or useless: every answer about it must still be right.
 */
export function randomTrain(seed: number): Train {
  const dice = new Dice(seed);
  const draft = new Draft(dice);
  const count = dice.pick([1, 2, 2, 2, 3, 3, 4, 5]);
  for (let k = 0; k < count; k++) draft.addSet(SET_NAMES[k] as string);
  draft.join();
  const pairs = draft.pairs();
  const places = [...draft.members, ...pairs.flatMap((p) => [p.driver.member, p.driven.member])];
  const input = dice.chance(0.7) ? INPUT_SHAFT : dice.pick(places);
  const bare = { name: '', about: '', input, output: input, ranges: [], devices: [] };
  const { bodyOf } = assemble({ ...bare, sets: draft.sets, pairs, joins: draft.joins });
  const output = dice.pick(places.filter((name) => bodyOf(name) !== bodyOf(input)));
  const devices = draft.devices([...new Set([...places, input])], input);
  const ranges = rangesOf(dice, devices);
  const { sets, joins } = draft;
  return { name: `Chance ${seed}`, about: '', input, output, sets, pairs, joins, devices, ranges };
}

const FRICTION = ['clutch', 'clutch', 'clutch', 'brake', 'brake', 'band'] as const;
const INPUT_SHAFT = 'turbine shaft';
const SET_NAMES = ['front', 'middle', 'rear', 'outer', 'last'];

class Draft {
  readonly sets: GearSet[] = [];
  readonly members: MemberName[] = [];
  joins: Join[] = [];
  private readonly dice: Dice;
  private readonly membersOf: MemberName[][] = [];

  constructor(dice: Dice) {
    this.dice = dice;
  }

  addSet(name: string): void {
    const { dice } = this;
    const owners = this.sets.filter((set) => ['plain', 'pair', 'stepped'].includes(set.kind));
    const owner = owners.length > 0 ? dice.pick(owners) : undefined;
    const kinds: GearSet['kind'][] = [
      'plain',
      'plain',
      'plain',
      'pair',
      'stepped',
      'wheels',
      'bevel',
    ];
    if (owner) kinds.push('sharing', 'sharing');
    const kind = dice.pick(kinds);
    const made = kind === 'sharing' && owner ? sharing(dice, name, owner) : fresh(dice, name, kind);
    this.sets.push(made.set);
    if (made.join) this.joins.push(made.join);
    const members = made.parts.map((part) => `${name}.${part}`);
    // A shared carrier is joined already, under its owner's name.
    if (kind !== 'sharing') members.push(`${name}.carrier`);
    this.members.push(...members);
    this.membersOf.push(members);
  }

  // Each set after the first is tied to what stands before it, once or twice.
  join(): void {
    const { dice } = this;
    const used = new Set<MemberName>();
    this.membersOf.forEach((own, k) => {
      const before = this.membersOf
        .slice(0, k)
        .flat()
        .filter((name) => !used.has(name));
      const ties = dice.several(before, k === 0 ? 0 : dice.pick([1, 2, 2]));
      dice.several(own, ties.length).forEach((mine, t) => {
        const members = [ties[t] as string, mine];
        members.forEach((name) => used.add(name));
        this.joins.push({ name: `link ${this.joins.length + 1}`, members });
      });
    });
    const rest = this.members.filter((name) => !used.has(name));
    if (dice.chance(0.2) && rest.length > 2)
      this.joins.push({ name: CASE, members: [dice.pick(rest)] });
  }

  pairs(): GearPair[] {
    const { dice } = this;
    if (!dice.chance(0.3)) return [];
    const kind = dice.pick(['external', 'internal', 'chain'] as const);
    const wheel = (member: MemberName) => ({ member, teeth: dice.whole(17, 71) });
    const first = {
      name: 'transfer',
      driver: wheel(dice.pick(this.members)),
      driven: wheel('layshaft'),
      kind,
    };
    if (!dice.chance(0.3)) return [first];
    const last = { driver: wheel('layshaft'), driven: wheel('differential case') };
    return [first, { name: 'final drive', ...last, kind: 'external' }];
  }

  devices(places: readonly MemberName[], input: MemberName): Device[] {
    const { dice } = this;
    const devices: Device[] = [];
    const inner = places.filter((name) => name !== input);
    const friction = dice.whole(2, 7);
    for (let k = 1; k <= friction; k++) {
      const [first, other] = dice.several(inner, 2) as [MemberName, MemberName];
      const kind = k === 1 ? 'clutch' : dice.pick(FRICTION);
      if (kind !== 'clutch') devices.push({ kind, name: `${kind} ${k}`, first, second: CASE });
      else if (k === 1 || dice.chance(0.7))
        devices.push({ kind, name: `clutch ${k}`, first: input, second: first });
      else devices.push({ kind, name: `clutch ${k}`, first, second: other });
    }
    const oneWay = dice.pick([0, 1, 1, 2, 2, 3, 4]);
    for (let k = 1; k <= oneWay; k++) {
      const [first, other] = dice.several(inner, 2) as [MemberName, MemberName];
      const lets: Way = dice.pick(['clockwise', 'anticlockwise']);
      const race = `race ${k}`;
      const second = dice.pick([CASE, CASE, CASE, race, other]);
      devices.push({ kind: 'one-way', name: `sprag ${k}`, first, second, lets });
      // A race of its own is held by a brake: a one-way clutch in series with it.
      if (second === race)
        devices.push({ kind: 'brake', name: `race brake ${k}`, first: race, second: CASE });
    }
    return devices;
  }
}

interface Made {
  readonly set: GearSet;
  /** The members that others can be tied to, but for the carrier. */
  readonly parts: readonly string[];
  readonly join?: Join;
}

function fresh(dice: Dice, name: string, kind: GearSet['kind']): Made {
  const sun = dice.whole(20, 44);
  const planet = dice.whole(14, 34);
  const planets = dice.whole(3, 5);
  switch (kind) {
    case 'pair': {
      const ring = sun + dice.whole(36, 60);
      const counted = dice.chance(0.5)
        ? { inner: dice.whole(15, 20), outer: dice.whole(15, 24) }
        : {};
      return { set: { kind, name, sun, ring, pairs: 3, ...counted }, parts: ['sun', 'ring'] };
    }
    case 'stepped': {
      const step = dice.whole(14, 34);
      const ring = sun + planet + step;
      return {
        set: { kind, name, sun, ring, steps: [planet, step], planets },
        parts: ['sun', 'ring'],
      };
    }
    case 'wheels':
      return wheels(dice, name);
    case 'bevel': {
      const side = dice.whole(14, 24);
      const counted = dice.chance(0.5) ? { pinion: dice.whole(9, 12) } : {};
      return { set: { kind, name, sides: [side, side], ...counted }, parts: ['left', 'right'] };
    }
    default: {
      // One tooth more or less in the ring is profile shift; such a planet has been counted.
      const shift = dice.pick([0, 0, 0, 1, -1]);
      const counted = shift !== 0 || dice.chance(0.5) ? { planet } : {};
      const ring = sun + 2 * planet + shift;
      return {
        set: { kind: 'plain', name, sun, ring, planets, ...counted },
        parts: ['sun', 'ring'],
      };
    }
  }
}

function sharing(dice: Dice, name: string, owner: GearSet): Made {
  const shares = owner.name;
  const base = { kind: 'sharing', name, shares } as const;
  const sun = dice.whole(20, 44);
  const ring = dice.whole(70, 99);
  // One inner planet for each planet of the owner's.
  const planets = 'planets' in owner ? owner.planets : 'pairs' in owner ? owner.pairs : undefined;
  const pairs = dice.chance(0.4) ? { pairs: planets ?? 3 } : {};
  switch (dice.whole(1, 3)) {
    case 1:
      return { set: { ...base, sun, ...pairs }, parts: ['sun'] };
    case 2:
      return { set: { ...base, ring }, parts: ['ring'] };
    default:
      return { set: { ...base, sun, ring, ...pairs }, parts: ['sun', 'ring'] };
  }
}

function wheels(dice: Dice, name: string): Made {
  const teeth = () => dice.whole(15, 60);
  const mesh = (a: string, b: string, internal = false) => ({ a, b, internal });
  if (dice.chance(0.4)) {
    // One idler between three suns.
    const sizes = new Map([
      ['fixed', 100],
      ['idler', dice.whole(18, 24)],
      ['high', 101],
      ['low', 99],
    ]);
    const meshes = [mesh('fixed', 'idler'), mesh('idler', 'high'), mesh('idler', 'low')];
    const set = { kind: 'wheels', name, wheels: sizes, carried: ['idler'], meshes } as const;
    return { set, parts: ['fixed', 'high', 'low'] };
  }
  // Two planets made in one piece, between a sun and a second wheel, sun or ring.
  const internal = dice.chance(0.5);
  const far = internal ? dice.whole(80, 110) : teeth();
  const sizes = new Map([
    ['near', teeth()],
    ['large', teeth()],
    ['small', teeth()],
    ['far', far],
  ]);
  const meshes = [
    mesh('near', 'large'),
    internal ? mesh('far', 'small', true) : mesh('small', 'far'),
  ];
  const carried = ['large', 'small'];
  const set = { kind: 'wheels', name, wheels: sizes, carried, meshes } as const;
  const join = { name: `${name} cluster`, members: [`${name}.large`, `${name}.small`] };
  return { set, parts: ['near', 'far'], join };
}

function rangesOf(dice: Dice, devices: readonly Device[]): Range[] {
  const friction = devices.filter(isFriction).map((device) => device.name);
  const gear = (_: unknown, k: number) => ({
    name: String(k + 1),
    on: dice.several(friction, dice.whole(1, Math.min(3, friction.length))),
  });
  const range = (name: string) => ({ name, gears: Array.from({ length: dice.whole(1, 4) }, gear) });
  return dice.several(['D', 'L', 'R'], dice.whole(0, 3)).map(range);
}
