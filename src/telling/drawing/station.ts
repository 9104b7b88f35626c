import {
  assemble,
  type Assembly,
  CASE,
  companyOf,
  type Device,
  type GearPair,
  type Mesh,
  type Train,
} from '../../engine/train/index.ts';

/** What stands along the axes of a half-section, each with ports at which bodies meet it. */
export type Station =
  | { readonly kind: 'company'; readonly name: string; readonly company: Company }
  | { readonly kind: 'device'; readonly name: string; readonly device: Device }
  | { readonly kind: 'pair'; readonly name: string; readonly pair: GearPair }
  | { readonly kind: 'end'; readonly name: 'input' | 'output'; readonly body: number };

/** Sets that share planets, drawn as one: planets on their pins, meshes in columns. */
export interface Company {
  readonly name: string;
  readonly sets: readonly string[];
  readonly planets: readonly Planet[];
  readonly columns: readonly Column[];
  readonly carrier: number;
  readonly bevel: boolean;
}

export interface Planet {
  readonly member: string;
  /** 0 for those that reach the ring; one more for each planet between. */
  readonly level: number;
  /** The columns of its wheels, first and last. */
  readonly from: number;
  readonly to: number;
}

/** Wheels in one plane: a central wheel inside, planets, a central wheel outside. */
export interface Column {
  readonly within: string;
  readonly planets: readonly number[];
  readonly sun?: CentralWheel;
  readonly ring?: CentralWheel;
}

/** A wheel that turns about the main axis, and the planet (by place) that it meshes. */
export interface CentralWheel {
  readonly member: string;
  readonly body: number;
  readonly planet: number;
}

/** Everything that stands along the axes of a train, in the order of its file. */
export function stationsOf(train: Train, assembly: Assembly = assemble(train)): Station[] {
  const companies = new Map<string, Mesh[]>();
  const pairs = new Set(train.pairs.map(({ name }) => name));
  for (const mesh of assembly.gearing.meshes) {
    if (pairs.has(mesh.within)) continue;
    const name = companyOf(train, mesh.within);
    companies.set(name, [...(companies.get(name) ?? []), mesh]);
  }
  const bodyOf = (member: string) => assembly.bodyOf(member) ?? 0;
  return [
    { kind: 'end', name: 'input', body: bodyOf(train.input) },
    ...[...companies].map(([name, meshes]): Station => {
      return { kind: 'company', name, company: companyFrom(name, meshes, assembly) };
    }),
    ...train.pairs.map((pair): Station => ({ kind: 'pair', name: pair.name, pair })),
    ...train.devices.map((device): Station => ({ kind: 'device', name: device.name, device })),
    { kind: 'end', name: 'output', body: bodyOf(train.output) },
  ];
}

/** Whether a device holds to the case, and so stands at the edge of the sheet. */
export function holdsToCase(device: Device): boolean {
  return device.second === CASE || device.first === CASE;
}

function companyFrom(name: string, meshes: readonly Mesh[], assembly: Assembly): Company {
  const pinned = new Set(assembly.gearing.planets.map(({ member }) => member));
  const members = [...new Set(meshes.flatMap(({ a, b }) => [a.member, b.member]))];
  const planets = members.filter((member) => pinned.has(member));
  const columns = columnsOf(meshes, planets, assembly);
  const levels = levelsOf(meshes, planets);
  return {
    name,
    sets: [...new Set(meshes.map(({ within }) => within))],
    planets: planets.map((member, p) => {
      const at = columns.flatMap((column, c) => (column.planets.includes(p) ? [c] : []));
      return { member, level: levels[p] ?? 0, from: Math.min(...at), to: Math.max(...at) };
    }),
    columns,
    carrier: assembly.bodyOf(meshes[0]?.carrier ?? '') ?? 0,
    bevel: meshes.some(({ kind }) => kind === 'bevel'),
  };
}

interface DraftColumn {
  within: string;
  wheels: Set<string>; // planet and teeth: a stepped planet's steps stand in columns of their own
  planets: number[];
  sun?: CentralWheel;
  ring?: CentralWheel;
}

function columnsOf(meshes: readonly Mesh[], planets: readonly string[], assembly: Assembly) {
  const columns: DraftColumn[] = [];
  for (const { within, a, b, kind } of meshes) {
    const onPins = [a, b].filter(({ member }) => planets.includes(member));
    const central = [a, b].find(({ member }) => !planets.includes(member));
    const side = central && (kind === 'internal' ? 'ring' : 'sun');
    const wheels = onPins.map(({ member, teeth }) => `${member} ${teeth}`);
    const fits = (column: DraftColumn) =>
      column.within === within &&
      wheels.some((wheel) => column.wheels.has(wheel)) &&
      (side === undefined || (kind !== 'bevel' && column[side] === undefined));
    let column = columns.find(fits);
    if (!column) columns.push((column = { within, wheels: new Set(), planets: [] }));
    for (const wheel of wheels) column.wheels.add(wheel);
    const places = onPins.map(({ member }) => planets.indexOf(member));
    column.planets = [...new Set([...column.planets, ...places])];
    if (central && side) {
      const body = assembly.bodyOf(central.member) ?? 0;
      column[side] = { member: central.member, body, planet: places[0] ?? 0 };
    }
  }
  return columns;
}

// How many planets stand between a planet and one that reaches a ring, or, where none does, the
// first of them.
function levelsOf(meshes: readonly Mesh[], planets: readonly string[]): number[] {
  const outermost = planets.filter((planet) =>
    meshes.some(({ kind, a, b }) => kind === 'internal' && [a.member, b.member].includes(planet)),
  );
  const level = new Map(
    (outermost.length > 0 ? outermost : planets.slice(0, 1)).map((p) => [p, 0]),
  );
  for (let round = 0; round < planets.length; round++) {
    for (const { a, b } of meshes) {
      if (!planets.includes(a.member) || !planets.includes(b.member)) continue;
      const [p, q] = [level.get(a.member), level.get(b.member)];
      if (p === undefined && q !== undefined) level.set(a.member, q + 1);
      if (q === undefined && p !== undefined) level.set(b.member, p + 1);
    }
  }
  return planets.map((planet) => level.get(planet) ?? 0);
}
