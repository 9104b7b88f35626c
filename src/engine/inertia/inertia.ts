import { assemble, isFriction, type MemberName, type Mesh, type Train } from '../train/index.ts';

/** How hard a body is to spin up, about the main axis (a planet: about its own). */
export interface Inertia {
  readonly kgm2: number;
  readonly from: 'given' | 'estimated';
}

/**
 * The inertia of each body but the case, by its label: as given under any of its names, else
 * estimated from its teeth and from what devices it carries. A planet's is that of all the planets
 * of its row together; their weight, which goes round, is its carrier's.
 *
 * The estimate takes steel, teeth of one size and width, and drums of one size (`ESTIMATE`): common
 * practice for a car's transaxle, no source. It serves to show how a train moves, not to judge one.
 */
export function inertiasOf(
  train: Train,
  given: ReadonlyMap<MemberName, number> = new Map(),
): Map<MemberName, Inertia> {
  const assembly = assemble(train);
  const estimates = estimatesOf(train);
  const inertias = new Map<MemberName, Inertia>();
  for (const { label, names } of assembly.bodies.slice(1)) {
    const known = names.map((name) => given.get(name)).find((kgm2) => kgm2 !== undefined);
    if (known !== undefined && !(known >= 0 && known < Infinity)) {
      throw new RangeError(`an inertia of ${known} kg·m²: ${label}`);
    }
    const planet = assembly.onPins.has(assembly.bodyOf(label) as number);
    const floor = planet ? 0 : ESTIMATE.shaftKgm2;
    const kgm2 = known ?? names.reduce((sum, name) => sum + (estimates.get(name) ?? 0), floor);
    inertias.set(label, { kgm2, from: known === undefined ? 'estimated' : 'given' });
  }
  return inertias;
}

/** What an estimate takes for granted. */
export const ESTIMATE = {
  moduleMm: 1.5,
  faceMm: 25,
  ringWallMm: 6,
  densityKgm3: 7850,
  /** Planets of a row whose number is not known. */
  planets: 3,
  /** A shaft, a race or a flange: more than nothing. */
  shaftKgm2: 2e-4,
  /** The drum, hub or plates at each end of a friction device. */
  drumKgm2: 1.6e-3,
} as const;

// By member name; a body's is the sum over its names.
function estimatesOf(train: Train): Map<MemberName, number> {
  const { gearing } = assemble(train);
  const found = new Map<MemberName, number>();
  const put = (member: MemberName, kgm2: number) => {
    found.set(member, (found.get(member) ?? 0) + kgm2);
  };
  const counts = new Map(
    train.sets.map((set) => {
      const counted = 'pairs' in set ? set.pairs : 'planets' in set ? set.planets : undefined;
      return [set.name, counted ?? ESTIMATE.planets] as const;
    }),
  );
  const planets = new Set(gearing.planets.map(({ member }) => member));
  const wheels = new Map<string, readonly [MemberName, number, boolean, Mesh]>();
  for (const mesh of gearing.meshes) {
    for (const [wheel, rim] of [
      [mesh.a, false],
      [mesh.b, mesh.kind === 'internal'],
    ] as const) {
      wheels.set(`${wheel.member} ${wheel.teeth}`, [wheel.member, wheel.teeth, rim, mesh]);
    }
  }
  for (const [member, teeth, rim, mesh] of wheels.values()) {
    const count = planets.has(member) ? (counts.get(mesh.within) ?? ESTIMATE.planets) : 1;
    put(member, count * (rim ? rimKgm2(teeth) : discKgm2(teeth)));
    if (!planets.has(member)) continue;
    const other = mesh.a.member === member ? mesh.b : mesh.a;
    const inside = mesh.kind === 'internal' ? -teeth : teeth;
    const arm = ((other.teeth + inside) / 2) * ESTIMATE.moduleMm * 1e-3;
    put(mesh.carrier, count * discKg(teeth) * arm * arm);
  }
  for (const device of train.devices) {
    if (!isFriction(device)) continue;
    put(device.first, ESTIMATE.drumKgm2);
    put(device.second, ESTIMATE.drumKgm2);
  }
  return found;
}

function radiusOf(teeth: number): number {
  return (teeth * ESTIMATE.moduleMm * 1e-3) / 2;
}

function discKg(teeth: number): number {
  const radius = radiusOf(teeth);
  return Math.PI * radius * radius * ESTIMATE.faceMm * 1e-3 * ESTIMATE.densityKgm3;
}

function discKgm2(teeth: number): number {
  const radius = radiusOf(teeth);
  return (discKg(teeth) * radius * radius) / 2;
}

function rimKgm2(teeth: number): number {
  const inner = radiusOf(teeth);
  const outer = inner + ESTIMATE.ringWallMm * 1e-3;
  const area = Math.PI * (outer * outer - inner * inner);
  const kg = area * ESTIMATE.faceMm * 1e-3 * ESTIMATE.densityKgm3;
  return (kg * (outer * outer + inner * inner)) / 2;
}
