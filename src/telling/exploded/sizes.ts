import { assemble, ownName, setGearing, type Train } from '../../engine/train/index.ts';

/** The largest parts reach so far from the axis. */
export const LARGE = 78;

/** A wheel about the main axis, as it is drawn. */
export interface DrawnWheel {
  readonly teeth: number;
  readonly radius: number;
  readonly internal: boolean;
}

/** The planets of a carrier as they are drawn: how many, how large, how far from the axis. */
export interface DrawnPlanets {
  readonly count: number;
  readonly teeth: number;
  readonly radius: number;
  readonly pin: number;
}

/** The sizes of what a train's parts carry, in sheet units: proportional to teeth, all alike. */
export interface Sizes {
  readonly wheels: ReadonlyMap<string, DrawnWheel>;
  /** By carrier, the outermost first. */
  readonly planets: ReadonlyMap<string, readonly DrawnPlanets[]>;
}

/**
 * What teeth say of sizes: every set to one module, so that its ring is larger than its sun by as
 * many teeth as it has more. Members go by their own names.
 */
export function sizesOf(train: Train): Sizes {
  const own = ownName(train);
  const gearings = train.sets.map((set) => ({ set, gearing: setGearing(train, set) }));
  const meshes = gearings.flatMap(({ gearing }) => gearing.meshes);
  const pairs = train.pairs.flatMap(({ driver, driven }) => [driver, driven]);
  const { onPins, bodyOf } = assemble(train);
  const pinned = (member: string) => onPins.has(bodyOf(member) ?? 0);
  const wheels = new Map<string, { teeth: number; internal: boolean }>();
  for (const { a, b, kind } of meshes) {
    for (const one of [a, b]) {
      const internal = kind === 'internal' && one.teeth === Math.max(a.teeth, b.teeth);
      if (!pinned(one.member)) wheels.set(own(one.member), { teeth: one.teeth, internal });
    }
  }
  for (const { member, teeth } of pairs) {
    if (!wheels.has(own(member))) wheels.set(own(member), { teeth, internal: false });
  }
  // The pin of a planet stands as far out as the two wheels' radii tell.
  const orbits = new Map<string, { count: number; teeth: number; pin: number }[]>();
  for (const { set, gearing } of gearings) {
    for (const { member, carrier, crosswise } of gearing.planets) {
      const mesh = gearing.meshes.find(({ a, b }) => {
        return (
          [a, b].some((one) => one.member === member) && !(pinned(a.member) && pinned(b.member))
        );
      });
      if (!mesh || crosswise) continue;
      const [planet, wheel] = mesh.a.member === member ? [mesh.a, mesh.b] : [mesh.b, mesh.a];
      const pin =
        mesh.kind === 'internal' ? wheel.teeth - planet.teeth : wheel.teeth + planet.teeth;
      const list = orbits.get(own(carrier)) ?? [];
      list.push({ count: countOf(set), teeth: planet.teeth, pin: Math.abs(pin) });
      orbits.set(own(carrier), list);
    }
  }
  const reach = [
    ...[...wheels.values()].map(({ teeth, internal }) => teeth * (internal ? 1.14 : 1)),
    ...[...orbits.values()].flat().map(({ teeth, pin }) => pin + teeth),
  ];
  const scale = (LARGE - 8) / Math.max(1, ...reach);
  return {
    wheels: new Map(
      [...wheels].map(([name, its]) => [name, { ...its, radius: its.teeth * scale }]),
    ),
    planets: new Map(
      [...orbits].map(([name, list]) => {
        const drawn = list.map(({ count, teeth, pin }) => {
          return { count, teeth, radius: teeth * scale, pin: pin * scale };
        });
        return [name, drawn.toSorted((a, b) => b.pin - a.pin)];
      }),
    ),
  };
}

function countOf(set: Train['sets'][number]): number {
  const counted = set.kind === 'pair' ? set.pairs : 'planets' in set ? set.planets : undefined;
  return counted ?? 3;
}
