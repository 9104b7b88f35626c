import { type Assembly, CASE, type Train } from '../../engine/train/index.ts';
import type { Subjects } from './arrangement.ts';
import type { Station } from './station.ts';

/**
 * The axis on which each body turns: 0 is the input's, the others are reached by gear pairs and
 * stand below it, a strip each. The case (body 0) is in every strip.
 */
export function stripsOf(
  train: Train,
  assembly: Assembly,
  stations: readonly Station[],
): readonly number[] {
  const group = assembly.bodies.map((_, body) => body);
  const root = (body: number): number => {
    const above = group[body] ?? body;
    return above === body ? body : root(above);
  };
  const unite = (bodies: readonly number[]) => {
    const turning = bodies.filter((body) => body !== 0);
    for (const body of turning) group[root(body)] = root(turning[0] ?? body);
  };
  for (const station of stations) unite(coaxial(station, assembly));
  const strips = new Map<number, number>();
  const strip = (body: number) => {
    const axis = root(body);
    if (!strips.has(axis)) strips.set(axis, strips.size);
  };
  strip(assembly.bodyOf(train.input) ?? 0);
  // Each pair reaches from an axis that has its place to one that may not have it yet.
  for (let round = 0; round < train.pairs.length; round++) {
    for (const { driver, driven } of train.pairs) {
      const [a, b] = [driver, driven].map(({ member }) => assembly.bodyOf(member) ?? 0);
      if (a === undefined || b === undefined) continue;
      if (strips.has(root(a))) strip(b);
      if (strips.has(root(b))) strip(a);
    }
  }
  assembly.bodies.forEach((_, body) => body !== 0 && !assembly.onPins.has(body) && strip(body));
  return assembly.bodies.map((_, body) => strips.get(root(body)) ?? 0);
}

/** The strip in which a station stands; of a pair, the upper. */
export function stripOf({ assembly, stations, strips }: Subjects, station: number): number {
  const its = stations[station];
  const of = (bodies: readonly (number | undefined)[]) =>
    Math.min(...bodies.flatMap((body) => (body ? [strips[body] ?? 0] : [])), strips.length);
  switch (its?.kind) {
    case 'company': {
      const { carrier, columns } = its.company;
      return of([carrier, ...columns.flatMap(({ sun, ring }) => [sun?.body, ring?.body])]);
    }
    case 'device': {
      const strip = of([assembly.bodyOf(its.device.first), assembly.bodyOf(its.device.second)]);
      return strip === strips.length ? 0 : strip;
    }
    case 'pair': {
      const wheels = [its.pair.driver, its.pair.driven];
      return Math.min(...wheels.map(({ member }) => strips[assembly.bodyOf(member) ?? 0] ?? 0));
    }
    case 'end':
    case 'disc':
      return of([its.body]);
    default:
      return 0;
  }
}

function coaxial(station: Station, assembly: Assembly): number[] {
  switch (station.kind) {
    case 'company':
      return [
        station.company.carrier,
        ...station.company.columns.flatMap(({ sun, ring }) =>
          [sun, ring].flatMap((wheel) => (wheel ? [wheel.body] : [])),
        ),
      ];
    case 'device':
      return [station.device.first, station.device.second]
        .filter((member) => member !== CASE)
        .map((member) => assembly.bodyOf(member) ?? 0);
    case 'pair':
    case 'end':
    case 'disc':
      return [];
  }
}

/** Whether the wheels of a pair stand on different axes, as they should. */
export function areApart(
  { pair }: Station & { kind: 'pair' },
  { assembly, strips }: Subjects,
): boolean {
  const [one, two] = [pair.driver, pair.driven].map(({ member }) => assembly.bodyOf(member) ?? 0);
  return strips[one ?? 0] !== strips[two ?? 0];
}
