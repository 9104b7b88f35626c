import { type Assembly, assemble, type GearSet, type Train } from '../../engine/train/index.ts';
import { type Blank, type Engagement, type Pin } from './blank.ts';
import { type EndNote, type EndView, MARGIN, SHEET } from './view.ts';
import {
  BORE,
  circle,
  type EndWheel,
  enlarge,
  MOST_TEETH,
  reachOf,
  wheelOf,
  within,
} from './endwheel.ts';
import { layOut } from './layout.ts';
import { blanksOf, type Cluster, pinDown } from './pinning.ts';
import { type Slice, sliceOf } from './slice.ts';
import { type Copy, place } from './timing.ts';

/**
 * A planetary set from its end. Its planets stand evenly where teeth allow, else at the nearest
 * places where they do. A file that does not count its planets is drawn with three, or as many
 * as go in evenly; a set of listed wheels, whose file cannot count them, with one of each.
 */
export function setView(train: Train, set: GearSet, seenFrom: EndView['seenFrom']): EndView {
  const slice = sliceOf(train, set);
  const { engagements, forced } = layOut(slice);
  const clusters = pinDown(engagements);
  const blanks = blanksOf(engagements);
  enlarge(blanks, (SHEET / 2 - MARGIN) / Math.max(1, ...blanks.map(reachOf)));
  const { copies, notes } = populate(clusters, slice, blanks);
  const assembly = assemble(train);
  const stripped = new Set(isTooFine(blanks) ? blanks.map((b) => b.member) : strippedOf(train));
  const draft = { slice, engagements, assembly, stripped, seenFrom };
  const wheels = clusters.flatMap((cluster, c) => planetWheels(cluster, copies[c] ?? [], draft));
  const central = blanks.filter(({ pin }) => !pin).map((blank) => centralWheel(blank, draft));
  const all = [...wheels, ...central].toSorted(behindFirst);
  const label = assembly.bodies[assembly.bodyOf(slice.carrier) ?? 0]?.label ?? slice.carrier;
  const members = [...slice.assumed].filter((name) => blanks.some((b) => b.member === name));
  return {
    name: set.name,
    kind: 'set',
    width: SHEET,
    height: SHEET,
    axis: { x: SHEET / 2, y: SHEET / 2 },
    wheels: all,
    carrier: { member: slice.carrier, label, plate: plateOf(blanks) },
    notes: [
      ...notes,
      ...(members.length > 0 ? [{ note: 'teeth not counted', members } as const] : []),
      ...(forced ? [{ note: 'teeth do not fit' } as const] : []),
    ],
    seenFrom,
  };
}

function strippedOf(train: Train): string[] {
  return train.sets.flatMap(({ stripped = [] }) => stripped);
}

// Each cluster as often as the file counts, or as goes in evenly.
function populate(
  clusters: readonly Cluster[],
  { planets }: Slice,
  blanks: readonly Blank[],
): { copies: Copy[][]; notes: EndNote[] } {
  const drawn = planets ?? COUNTS.find((count) => isEven(clusters, count, blanks)) ?? 1;
  const notes: EndNote[] = planets === undefined ? [{ note: 'planets not counted', drawn }] : [];
  const copies = standAll(clusters, drawn, blanks);
  const fewest = Math.min(drawn, ...copies.map((own) => own.length));
  if (fewest < drawn) notes.push({ note: 'planets left out', counted: drawn, drawn: fewest });
  if (isTooFine(blanks)) notes.push({ note: 'teeth too fine' });
  const off = Math.max(0, ...copies.flat().map(({ off: degrees }) => Math.abs(degrees)));
  if (off > 1e-6) notes.push({ note: 'not evenly spaced', degrees: off });
  return { copies, notes };
}

function isTooFine(blanks: readonly Blank[]): boolean {
  return blanks.some(({ teeth }) => teeth > MOST_TEETH);
}

const COUNTS = [3, 4, 5, 2, 6];

function isEven(clusters: readonly Cluster[], count: number, blanks: readonly Blank[]): boolean {
  const phases = blanks.map(({ phase }) => phase);
  const copies = standAll(clusters, count, blanks).flat();
  blanks.forEach((blank, k) => {
    const phase = phases[k];
    if (phase === undefined) delete blank.phase;
    else blank.phase = phase;
  });
  const even = copies.every(({ off }) => Math.abs(off) < 1e-6);
  const clear = blanks.every(({ pin, tip }) => {
    return !pin || 2 * (pin.radius ?? 0) * Math.sin(Math.PI / count) > 2.02 * tip;
  });
  return even && clear && copies.length === count * clusters.length;
}

function standAll(
  clusters: readonly Cluster[],
  count: number,
  blanks: readonly Blank[],
): (Copy & { readonly off: number })[][] {
  return clusters.map((cluster, c) => {
    const copies: (Copy & { readonly off: number })[] = [];
    const step = 360 / count;
    for (let k = 0; k < count; k++) {
      const ideal = (k + c / clusters.length) * step;
      const copy = isTooFine(blanks)
        ? { degrees: ideal, turned: new Map() }
        : place(cluster, ideal, step / 3, blanks);
      if (copy) copies.push({ ...copy, off: copy.degrees - ideal });
    }
    return copies;
  });
}

interface Draft {
  readonly slice: Slice;
  readonly engagements: readonly Engagement[];
  readonly assembly: Assembly;
  readonly stripped: ReadonlySet<string>;
  readonly seenFrom: EndView['seenFrom'];
}

function planetWheels(cluster: Cluster, copies: readonly Copy[], draft: Draft): EndWheel[] {
  const { slice, assembly, stripped } = draft;
  const blanks = blanksOf(cluster.engagements).filter(({ pin }) => pin);
  return blanks.flatMap((blank) => {
    const pin = blank.pin as Pin;
    const wheel = wheelOf(blank, assembly, {
      kind: 'planet',
      orbitsWith: slice.carrier,
      plane: planeOf(blank, draft),
      toothless: stripped.has(blank.member),
      // Steps of one casting sit on one pin.
      bore: BORE * Math.min(...blanks.filter((b) => b.pin === pin).map(({ root }) => root)),
      ...(slice.assumed.has(blank.member) && throughMesh(blank, cluster)),
    });
    return copies.map(({ degrees, turned }) => ({
      ...wheel,
      pin: { radius: pin.radius ?? 0, degrees: within((pin.degrees ?? 0) + degrees) },
      phase: within((blank.phase ?? 0) + (turned.get(pin) ?? 0)),
    }));
  });
}

// A planet whose teeth are not counted turns as its meshes with a counted wheel make it: of each
// mesh, z₁·ω₁ = ∓ z₂·ω₂ against the carrier.
function throughMesh(blank: Blank, { engagements }: Cluster) {
  const per = new Map<Blank, { turnsWith: string; per: number }>();
  for (const { a, b } of engagements) {
    for (const { pin, member, teeth } of [a, b]) {
      if (!pin)
        per.set(teeth === a.teeth && member === a.member ? a : b, { turnsWith: member, per: 1 });
    }
  }
  for (let round = 0; round < engagements.length; round++) {
    for (const { a, b, internal } of engagements) {
      for (const [from, to] of [
        [a, b],
        [b, a],
      ] as const) {
        const known = per.get(from);
        if (!known || per.has(to)) continue;
        const ratio = ((internal ? 1 : -1) * from.teeth) / to.teeth;
        per.set(to, { turnsWith: known.turnsWith, per: known.per * ratio });
      }
    }
  }
  return per.get(blank);
}

function centralWheel(blank: Blank, draft: Draft): EndWheel {
  return wheelOf(blank, draft.assembly, {
    kind: blank.ring ? 'ring' : 'sun',
    orbitsWith: 'case',
    plane: planeOf(blank, draft),
    toothless: draft.stripped.has(blank.member),
  });
}

// Wheels that mesh are in one plane; of two on one centre the later is behind. The first named
// is nearest to the input end.
function planeOf(blank: Blank, { engagements, seenFrom }: Draft): number {
  const planes: Blank[][] = [];
  const alike = (a: Blank, b: Blank) => a.pin === b.pin && a.ring === b.ring;
  for (const { a, b } of engagements) {
    const met = planes.findIndex((plane) => plane.includes(a) || plane.includes(b));
    const plane = planes[met];
    const fresh = [a, b].filter((wheel) => !plane?.includes(wheel));
    if (plane && !fresh.some((wheel) => plane.some((other) => alike(wheel, other) && !wheel.pin))) {
      plane.push(...fresh);
    } else planes.push([a, b].filter((wheel) => !planes.flat().includes(wheel)));
  }
  const plane = planes.findIndex((wheels) => wheels.includes(blank));
  return seenFrom === 'input' ? plane : planes.length - 1 - plane;
}

const ORDER = ['ring', 'planet', 'wheel', 'sun'];

function behindFirst(a: EndWheel, b: EndWheel): number {
  return b.plane - a.plane || ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind);
}

// A ring about the axis, wide enough to hold the pins.
function plateOf(blanks: readonly Blank[]): string {
  const planets = blanks.filter(({ pin }) => pin);
  const radii = planets.map(({ pin }) => pin?.radius ?? 0);
  const half = 0.42 * Math.min(...planets.map(({ root }) => root));
  const [inner, outer] = [Math.min(...radii) - half, Math.max(...radii) + half];
  return planets.length === 0 ? '' : circle(outer) + circle(Math.max(4, inner));
}
