import {
  assemble,
  type Assembly,
  CASE,
  companyOf,
  type Device,
  type GearPair,
  type Mesh,
  outputsOf,
  type Train,
} from '../../engine/train/index.ts';

/** What stands along the axes of a stick diagram, each with exits at which bodies meet it. */
export type Station =
  | { readonly kind: 'company'; readonly name: string; readonly company: Company }
  | { readonly kind: 'device'; readonly name: string; readonly device: Device }
  | { readonly kind: 'pair'; readonly name: string; readonly pair: GearPair }
  | { readonly kind: 'end'; readonly name: 'input' | 'output'; readonly body: number }
  /** A disc by which a body passes from its shaft to its drum, if it has both. */
  | { readonly kind: 'disc'; readonly name: string; readonly body: number };

/** Sets that share planets, drawn as one: planets on their pins, meshes in columns. */
export interface Company {
  readonly name: string;
  readonly sets: readonly string[];
  readonly planets: readonly Planet[];
  readonly columns: readonly Column[];
  /** How many planets stand between a ring and a sun, at most. */
  readonly levels: number;
  readonly carrier: number;
  readonly bevel: boolean;
}

export interface Planet {
  readonly member: string;
  readonly body: number;
  /** 0 for those that reach the ring; one more for each planet between. */
  readonly level: number;
  /** The columns of its wheels, first and last. */
  readonly from: number;
  readonly to: number;
}

/** Wheels in one plane: a central wheel inside, planets, a central wheel outside. */
export interface Column {
  readonly within: string;
  /** Planets by place, each with its wheel's size, 1 for the largest of its company. */
  readonly planets: readonly { readonly planet: number; readonly size: number }[];
  readonly sun?: CentralWheel;
  readonly ring?: CentralWheel;
  /** Planets that mesh each other, the outer first, and what the mesh is called. */
  readonly between: readonly { readonly outer: number; readonly mesh: string }[];
}

/** A wheel that turns about the main axis, and the planet (by place) that it meshes. */
export interface CentralWheel {
  readonly member: string;
  readonly body: number;
  readonly planet: number;
  /** What the mesh is called: "within: a, b". */
  readonly mesh: string;
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
    ...assembly.bodies.flatMap(({ label }, body): Station[] => {
      return body === 0 || assembly.onPins.has(body) ? [] : [{ kind: 'disc', name: label, body }];
    }),
    ...outputsOf(train).map((member): Station => {
      return { kind: 'end', name: 'output', body: bodyOf(member) };
    }),
  ];
}

/** What a mesh is called in a picture: "within: a, b". */
export function meshName({ within, a, b }: Pick<Mesh, 'within' | 'a' | 'b'>): string {
  return `${within}: ${a.member}, ${b.member}`;
}

/** Whether a device holds to the case, and so stands at the edge of the sheet. */
export function holdsToCase(device: Device): boolean {
  return device.second === CASE || device.first === CASE;
}

function companyFrom(name: string, meshes: readonly Mesh[], assembly: Assembly): Company {
  const pinned = new Set(assembly.gearing.planets.map(({ member }) => member));
  const members = [...new Set(meshes.flatMap(({ a, b }) => [a.member, b.member]))];
  const planets = members.filter((member) => pinned.has(member));
  const levels = levelsOf(meshes, planets);
  const columns = columnsOf(meshes, planets, levels, assembly);
  return {
    name,
    sets: [...new Set(meshes.map(({ within }) => within))],
    planets: planets.map((member, p) => {
      const at = columns.flatMap((column, c) => (has(column, p) ? [c] : []));
      const body = assembly.bodyOf(member) ?? 0;
      return { member, body, level: levels[p] ?? 0, from: Math.min(...at), to: Math.max(...at) };
    }),
    columns,
    levels: Math.max(0, ...levels) + 1,
    carrier: assembly.bodyOf(meshes[0]?.carrier ?? '') ?? 0,
    bevel: meshes.some(({ kind }) => kind === 'bevel'),
  };
}

function has({ planets }: Column, p: number): boolean {
  return planets.some(({ planet }) => planet === p);
}

interface DraftColumn {
  within: string;
  wheels: Map<string, number>; // by member and teeth: steps of a planet stand in columns of their own
  pairs: { places: readonly number[]; mesh: string }[];
  sun?: CentralWheel;
  ring?: CentralWheel;
}

function columnsOf(
  meshes: readonly Mesh[],
  planets: readonly string[],
  levels: readonly number[],
  assembly: Assembly,
): Column[] {
  const drafts: DraftColumn[] = [];
  for (const { within, a, b, kind } of meshes) {
    const onPins = [a, b].filter(({ member }) => planets.includes(member));
    const central = [a, b].find(({ member }) => !planets.includes(member));
    const side = central && (kind === 'internal' ? 'ring' : 'sun');
    const keys = onPins.map(({ member, teeth }) => `${teeth} ${member}`);
    const fits = (column: DraftColumn) =>
      column.within === within &&
      keys.some((key) => column.wheels.has(key)) &&
      (side === undefined || (kind !== 'bevel' && column[side] === undefined));
    let column = drafts.find(fits);
    if (!column) drafts.push((column = { within, wheels: new Map(), pairs: [] }));
    onPins.forEach(({ teeth }, k) => column?.wheels.set(keys[k] ?? '', teeth));
    const mesh = meshName({ within, a, b });
    if (!central)
      column.pairs.push({ places: onPins.map((one) => planets.indexOf(one.member)), mesh });
    if (central && side) {
      const planet = planets.indexOf(onPins[0]?.member ?? '');
      const body = assembly.bodyOf(central.member) ?? 0;
      column[side] = { member: central.member, body, planet: Math.max(0, planet), mesh };
    }
  }
  const most = Math.max(1, ...drafts.flatMap(({ wheels }) => [...wheels.values()]));
  const level = (planet: number) => levels[planet] ?? 0;
  return drafts.map(({ wheels, pairs, ...column }): Column => {
    const own = [...wheels].map(([key, teeth]) => {
      return { planet: planets.indexOf(key.slice(key.indexOf(' ') + 1)), size: teeth / most };
    });
    const between = pairs.map(({ places: [p = 0, q = 0], mesh }) => {
      return { outer: level(p) <= level(q) ? p : q, mesh };
    });
    return { ...column, planets: own, between };
  });
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
