import type { Train } from '../../engine/train/index.ts';
import type { CountedIn, FigureOddity } from './warning.ts';

/** Friction plates of one pack, or of the packs in one part, as a section counts them. */
interface Count {
  readonly in: CountedIn;
  readonly frictions: number;
}

/** Where teardown, packs and capacities count the friction discs of the same devices unlike. */
export function oddCounts(
  train: Train,
): readonly { readonly oddity: FigureOddity; readonly path: readonly string[] }[] {
  const plated = train.devices.filter(({ kind }) => kind === 'clutch' || kind === 'brake');
  const names = plated.map(({ name }) => name);
  const parts = (train.teardown ?? []).filter(({ frictions }) => frictions !== undefined);
  const groups = [
    ...parts.map(({ name, carries, frictions = 0 }) => {
      const devices = names.filter((its) => carries.includes(its));
      const counts: Count[] = [{ in: 'teardown', frictions }];
      return { devices, counts, path: ['teardown', name, 'frictions'] };
    }),
    ...names.map((name) => ({ devices: [name], counts: [], path: ['packs', name, 'plates'] })),
  ];
  const told = new Set<string>();
  return groups.flatMap(({ devices, counts, path }) => {
    if (devices.length === 0) return [];
    const all = [...counts, ...SECTIONS.flatMap((count) => count(train, devices) ?? [])];
    const of = devices.join(', ');
    if (new Set(all.map(({ frictions }) => frictions)).size < 2 || told.has(of)) return [];
    told.add(of);
    return [{ oddity: { problem: 'counts differ', of, counts: all } as const, path }];
  });
}

// A section's count of all these devices together; undefined where it does not tell each of them.
const SECTIONS: readonly ((train: Train, devices: readonly string[]) => Count | undefined)[] = [
  ({ packs = [] }, devices) => {
    const counts = devices.map((name) => {
      const plates = packs.find(({ device }) => device === name)?.plates;
      return plates?.filter(({ kind }) => kind === 'friction').length;
    });
    return summed('packs', counts);
  },
  ({ capacities = [] }, devices) => {
    const counts = devices.map((name) => {
      const its = capacities.find(({ device }) => device === name);
      // Two faces a friction disc.
      return its && 'faces' in its ? its.faces / 2 : undefined;
    });
    return summed('capacities', counts);
  },
];

function summed(section: CountedIn, counts: readonly (number | undefined)[]): Count | undefined {
  const known = counts.filter((its) => its !== undefined);
  if (known.length < counts.length) return undefined;
  return { in: section, frictions: known.reduce((a, b) => a + b, 0) };
}
