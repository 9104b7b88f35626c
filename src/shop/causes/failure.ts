import { type Fault, faultMatrix } from '../../engine/faults/index.ts';
import { isFriction, type Train } from '../../engine/train/index.ts';
import type { Finding, FoundSign } from './finding.ts';

/** What brings wear and damage about. */
export type Root =
  | 'low pressure'
  | 'high pressure'
  | 'poor cooling'
  | 'water'
  | 'debris'
  | 'wrong fluid'
  | 'leaking circuit'
  | 'wrong clearance'
  | 'dragging device'
  | 'shock'
  | 'no lubrication'
  | 'wrong end play';

/** What may have caused some of what was found: it is put right before the unit is built. */
export interface Failure {
  readonly root: Root;
  /** The device, set or member where it is looked for; of the whole unit where there is none. */
  readonly of?: string;
  /** The device that would drag against `of`. */
  readonly by?: string;
  readonly explains: readonly Finding[];
  /** What it explains, weighed; only the order counts. */
  readonly weight: number;
}

// How much a sign speaks for a root. Common practice, no source.
const UNIT: Readonly<Partial<Record<Root, Weights>>> = {
  'low pressure': {
    'worn pump': 4,
    'blocked filter': 3,
    'stuck valve': 2,
    burnt: 1,
    'burnt fluid': 1,
  },
  'high pressure': { 'worn splines': 2, broken: 1, 'stuck valve': 1 },
  'poor cooling': {
    'blocked cooler': 4,
    'burnt fluid': 2,
    'worn converter': 2,
    blued: 1,
    burnt: 1,
    'bad seal': 1,
  },
  water: { water: 5, burnt: 1, 'worn bushing': 1 },
  debris: {
    metal: 3,
    'lining dust': 2,
    'blocked filter': 2,
    'stuck valve': 2,
    'worn pump': 2,
    broken: 1,
  },
  'wrong fluid': { 'bad seal': 1, burnt: 1, 'burnt fluid': 1 },
};
const DEVICE: Readonly<Partial<Record<Root, Weights>>> = {
  'leaking circuit': { 'bad seal': 4, 'worn rings': 4, burnt: 3 },
  'wrong clearance': { 'hot spots': 3, burnt: 2 },
};
const ONE_WAY: Readonly<Partial<Record<Root, Weights>>> = {
  shock: { broken: 3 },
  'no lubrication': { broken: 2, blued: 3 },
};
const OTHER: Readonly<Partial<Record<Root, Weights>>> = {
  'no lubrication': { blued: 4, 'worn bushing': 2, 'worn thrust face': 2, broken: 1 },
  'wrong end play': { 'worn thrust face': 4, broken: 1, 'worn bushing': 1 },
};
type Weights = Readonly<Partial<Record<FoundSign, number>>>;

/** Less than this is no ground to look for it. */
const LEAST = 2;

/**
 * From what was found back to what may have caused it, the weightiest first. One burnt device points
 * at its own circuit, several at what they share; a device drags against another where the train ties
 * up with it stuck on, in a gear that applies the other.
 */
export function failuresOf(train: Train, findings: readonly Finding[]): Failure[] {
  const ofUnit = rootsIn(UNIT, findings);
  const things = [...new Set(findings.flatMap(({ of }) => of ?? []))];
  const ofThings = things.flatMap((of) => {
    const its = findings.filter((one) => one.of === of);
    const device = train.devices.find(({ name }) => name === of);
    const table = !device ? OTHER : isFriction(device) ? DEVICE : ONE_WAY;
    return rootsIn(table, its).map((failure) => ({ ...failure, of }));
  });
  return [...ofUnit, ...ofThings, ...draggers(train, findings)]
    .filter(({ weight }) => weight >= LEAST)
    .toSorted((a, b) => b.weight - a.weight);
}

function rootsIn(
  table: Readonly<Partial<Record<Root, Weights>>>,
  findings: readonly Finding[],
): Failure[] {
  return (Object.entries(table) as [Root, Weights][]).map(([root, weights]) => {
    const explains = findings.filter(({ sign }) => weights[sign] !== undefined);
    const weight = explains.reduce((sum, { sign }) => sum + (weights[sign] as number), 0);
    return { root, explains, weight };
  });
}

function draggers(train: Train, findings: readonly Finding[]): Failure[] {
  const burnt = findings.filter(({ sign, of }) => sign === 'burnt' && of !== undefined);
  const devices = train.devices.filter(isFriction);
  if (burnt.length === 0 || devices.length === 0) return [];
  const only = devices.map(({ name: device }): Fault => ({
    what: 'device',
    device,
    is: 'will not release',
  }));
  const { gears, rows } = faultMatrix(train, { only });
  return burnt.flatMap((finding) => {
    const of = finding.of as string;
    return rows.flatMap(({ cells }, k): Failure[] => {
      const by = devices[k]?.name as string;
      const fights = gears.some(({ on }, g) => on.includes(of) && cells[g]?.drive.is === 'tied up');
      const signs = findings.filter((one) => one.of === by && DRAGGED.has(one.sign));
      if (by === of || !fights || signs.length === 0) return [];
      return [
        {
          root: 'dragging device',
          of,
          by,
          explains: [finding, ...signs],
          weight: 3 + signs.length,
        },
      ];
    });
  });
}

// What a device that drags shows itself.
const DRAGGED: ReadonlySet<FoundSign> = new Set(['burnt', 'hot spots']);
