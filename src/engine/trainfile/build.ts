import {
  type Bolts,
  CASE,
  type Device,
  type GearPair,
  type GearSet,
  type Part,
  type Train,
} from '../train/index.ts';
import type { DeviceEntry, PairEntry, SetEntry } from './definition.ts';
import type { FileEntries } from './outline.ts';
import type { PartEntry } from './part.ts';

/** A train of a file's entries, in the file's order; what is missing is left empty. */
export function buildTrain(file: FileEntries): Train {
  return {
    name: file.name ?? '',
    about: file.about ?? '',
    input: file.input ?? '',
    ...outputs(file.output),
    ...(file.forward && { forward: file.forward }),
    ...(file['final drive'] && { finalDrive: [file['final drive']].flat() }),
    ...(file.ends && { ends: file.ends }),
    sets: listOf(file.sets, gearSet),
    pairs: listOf(file['gear pairs'], gearPair),
    joins: listOf(file.joined, (name, members) => ({ name, members })),
    devices: listOf(file.devices, device),
    ranges: listOf(file.ranges, (name, gears) => {
      return { name, gears: listOf(gears, (gear, on) => ({ name: gear, on })) };
    }),
    ...(file.teardown && { teardown: listOf(file.teardown, part) }),
    ...(file.capacities && {
      capacities: listOf(file.capacities, (name, its) => ({ device: name, ...its })),
    }),
    ...(file.engine && { engine: { ...file.engine } }),
    ...(file.car && { car: { ...file.car } }),
    ...(file.fluid && { fluid: { ...file.fluid } }),
    ...(file.endplay && {
      endPlays: listOf(file.endplay, (name, its) => ({ shaft: name, ...its })),
    }),
    ...(file.bands && { bands: listOf(file.bands, (name, its) => ({ device: name, ...its })) }),
    ...(file.preload && {
      preloads: listOf(file.preload, (name, its) => ({ bearings: name, ...its })),
    }),
    ...(file.wear && { wear: listOf(file.wear, (name, its) => ({ part: name, ...its })) }),
    ...(file.packs && { packs: listOf(file.packs, (name, pack) => ({ device: name, ...pack })) }),
  };
}

function outputs(entry: FileEntries['output'] = ''): Pick<Train, 'output' | 'others'> {
  if (typeof entry === 'string') return { output: entry };
  const [output = '', ...others] = entry;
  return { output, ...(others.length > 0 && { others }) };
}

function listOf<In, Out>(
  entries: ReadonlyMap<string, In> | undefined,
  build: (name: string, entry: In) => Out,
): Out[] {
  return [...(entries ?? [])].map(([name, entry]) => build(name, entry));
}

// The keys that tell the kind stand for it; the rest of the entry is the set as it is.
function gearSet(name: string, entry: SetEntry): GearSet {
  if ('sides' in entry) return { kind: 'bevel', name, ...entry };
  if ('shares' in entry) return { kind: 'sharing', name, ...entry };
  if ('steps' in entry) return { kind: 'stepped', name, ...entry };
  if ('pairs' in entry) return { kind: 'pair', name, ...entry };
  if ('wheels' in entry) {
    const meshes = entry.meshes.map(([a, b, internal]) => ({
      a,
      b,
      internal: internal !== undefined,
    }));
    // The walk makes a map of what the definitions call a record.
    const wheels = entry.wheels as unknown as ReadonlyMap<string, number>;
    return { kind: 'wheels', name, wheels, carried: entry.carried, meshes };
  }
  return { kind: 'plain', name, ...entry };
}

function gearPair(name: string, { driver, driven, kind }: PairEntry): GearPair {
  return {
    name,
    driver: { member: driver[0], teeth: driver[1] },
    driven: { member: driven[0], teeth: driven[1] },
    kind: kind ?? 'external',
  };
}

function device(name: string, entry: DeviceEntry): Device {
  if ('clutch' in entry)
    return { kind: 'clutch', name, first: entry.clutch[0], second: entry.clutch[1] };
  if ('brake' in entry) return { kind: 'brake', name, first: entry.brake, second: CASE };
  if ('pawl' in entry) return { kind: 'pawl', name, first: entry.pawl, second: CASE };
  if ('band' in entry) return { kind: 'band', name, first: entry.band, second: CASE };
  const [first, second] = entry['one-way'];
  return { kind: 'one-way', name, first, second, lets: entry.lets };
}

function part(name: string, { carries = [], selective, bolts, ...notes }: PartEntry): Part {
  return {
    name,
    carries,
    ...notes,
    ...(selective && { selective: selective === 'yes' }),
    ...(bolts && { bolts: boltsOf(bolts) }),
  };
}

function boltsOf({ once, ...its }: NonNullable<PartEntry['bolts']>): Bolts {
  return { ...its, ...(once && { once: once === 'yes' }) };
}
