import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  type FaultCell,
  type FaultMatrix,
  faultMatrix,
  type FaultRow,
  faultText,
} from '../src/engine/faults/index.ts';
import type { Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { ROOT } from './sources.ts';

// What a symptom means, as the trade knows it by heart, against what the trains of ours do.
// Common practice, no source. Each rule is a symptom, written as a pattern of gears, and the
// faults that show just that; where the physics knows more of them, or otherwise, a test says so.
//
// Out of reach of a train's mechanics, and so not here: no oil, filter, pump and converter hub;
// pressure high or low; stall speeds in rpm and the converter's stator; late, harsh or cold
// engagements; flare and shudder, which are timing; a ratio that drifts with load, which is
// capacity; top gear lost with heat. "Slips at launch" is here as what it ends in: no drive.

const kestrel = matrixOf('kestrel-three-speed');
const plover = matrixOf('plover-three-speed');
const curlew = matrixOf('curlew-four-speed-overdrive');
const cuckoo = matrixOf('cuckoo-puzzle');
const lapwing = matrixOf('lapwing-six-speed');
const avocet = matrixOf('avocet-four-speed');

describe('no move in D, moves in manual low: the low one-way clutch slips or is backwards', () => {
  const symptom = { 'D 1': 'no drive', 'L 1': 'drives as it should' } as const;

  test.each([
    ['kestrel', kestrel, 'low sprag'],
    ['plover', plover, 'low roller'],
    ['curlew', curlew, 'low roller'],
    ['cuckoo', cuckoo, 'low roller'],
    ['lapwing', lapwing, 'low sprag'],
    ['avocet', avocet, 'low roller'],
  ])('%s', (_, matrix, clutch) => {
    // A clutch that is left out, or whose cage is, is one that holds nothing.
    expect(devicesOf(showing(matrix, symptom))).toEqual(
      expect.arrayContaining([`${clutch}: slips`, `${clutch}: backwards`, `${clutch}: left out`]),
    );
    const others = devicesOf(showing(matrix, symptom)).filter((fault) => !fault.startsWith(clutch));
    // Curlew's overdrive has a one-way clutch too: in series with all of D, and covered in L.
    expect(others).toEqual(
      matrix === curlew
        ? ['overdrive roller: slips', 'overdrive roller: backwards', 'overdrive roller: left out']
        : [],
    );
  });

  test('manual second parts them: it drives if the clutch slips, and binds if it is backwards', () => {
    expect(cell(kestrel, 'low sprag: slips', 'L 2').drive.is).toBe('same');
    expect(cell(kestrel, 'low sprag: backwards', 'L 2').drive.is).toBe('tied up');
    // The physics: any second parts them, D 2 too; a driver who gets no first never gets there.
    expect(cell(kestrel, 'low sprag: backwards', 'D 2').drive.is).toBe('tied up');
  });
});

describe('no move in D nor in manual low, R good: the forward clutch, or what it feeds', () => {
  const symptom = { 'D 1': 'no drive', 'L 1': 'no drive', 'R R': 'as it should' } as const;

  test.each([
    ['kestrel', kestrel, 'forward clutch'],
    ['plover', plover, 'forward clutch'],
    ['curlew', curlew, 'forward clutch'],
    ['cuckoo', cuckoo, 'forward clutch'],
    ['lapwing', lapwing, 'low clutch'],
    ['avocet', avocet, 'low clutch'],
  ])('%s', (_, matrix, clutch) => {
    expect(devicesOf(showing(matrix, symptom))).toEqual([`${clutch}: will not apply`]);
  });

  test('what it feeds: the front set without teeth, and its splines', () => {
    const fed = showing(kestrel, symptom).map(({ faults }) => faults.map(faultText).join());
    for (const fault of ['front.ring: stripped', 'front.sun: stripped', 'front.planet: stripped'])
      expect(fed).toContain(fault);
    expect(fed).toContain('sun shell: stripped at front.sun');
    expect(fed).not.toContain('rear.sun: stripped'); // R needs the rear set
  });
});

test('no R and no top, first and second good: the direct clutch, which they share', () => {
  for (const matrix of [kestrel, plover, cuckoo]) {
    const good = { 'D 1': 'as it should', 'D 2': 'as it should' } as const;
    const found = showing(matrix, { ...good, 'D 3': 'not as it should', 'R R': 'no drive' });
    expect(devicesOf(found)).toEqual(['direct clutch: will not apply']);
  }
});

test('no R and no engine braking in manual low, the rest good: the low or reverse brake', () => {
  for (const [matrix, brake] of [
    [kestrel, 'low brake'],
    [plover, 'low and reverse band'],
    [cuckoo, 'low brake'],
    [lapwing, 'low brake'],
    [avocet, 'low brake'],
  ] as const) {
    const symptom = { 'R R': 'no drive', 'L 1': 'no braking', 'D 1': 'as it should' } as const;
    const found = devicesOf(showing(matrix, symptom));
    expect(found).toContain(`${brake}: will not apply`);
    expect(found.filter((fault) => !fault.startsWith(brake))).toEqual([]);
  }
});

test('R good and no second: the second brake or its one-way clutch, which no road test parts', () => {
  for (const matrix of [kestrel, curlew, cuckoo]) {
    const symptom = { 'D 1': 'as it should', 'R R': 'as it should' } as const;
    const lost = { ...symptom, 'D 2': 'first gear again', 'D 3': 'as it should' } as const;
    const found = devicesOf(showing(matrix, lost));
    expect(found).toEqual(
      expect.arrayContaining(['second brake: will not apply', 'second roller: slips']),
    );
    expect(classOf(matrix, 'second brake: will not apply')).toContain('second roller: slips');
  }
  // The physics knows a third where the brake is off in top, as cuckoo's is: the roller fitted
  // backwards leaves first where second should be, and brakes in second.
  const third = cell(cuckoo, 'second roller: backwards', 'D 2');
  expect([third.drive.is, third.braking]).toEqual(['another ratio', 'gained']);
});

test('second good in D, no engine braking in manual second: its band', () => {
  const symptom = { 'D 2': 'as it should', 'L 2': 'no braking' } as const;
  expect(devicesOf(showing(kestrel, { ...symptom, 'L 1': 'as it should' }))).toEqual([
    'intermediate band: will not apply',
  ]);
});

describe('first drives and brakes on coast, then binds: what should have released', () => {
  test('the low one-way clutch seized, or the low brake stuck on', () => {
    for (const [matrix, clutch, brake] of [
      [kestrel, 'low sprag', 'low brake'],
      [plover, 'low roller', 'low and reverse band'],
      [cuckoo, 'low roller', 'low brake'],
    ] as const) {
      const symptom = { 'D 1': 'brakes where it should not', 'D 2': 'tied up' } as const;
      const found = devicesOf(showing(matrix, { ...symptom, 'L 1': 'as it should' }));
      expect(found).toEqual(
        expect.arrayContaining([`${clutch}: seized`, `${brake}: will not release`]),
      );
      expect(classOf(matrix, `${clutch}: seized`)).toContain(`${brake}: will not release`);
      // The physics: so does one fitted backwards brake, but with that first does not drive.
      expect(found).not.toContain(`${clutch}: backwards`);
    }
  });

  test('a band that drags, if only the shift from second to third binds', () => {
    const symptom = { 'D 2': 'drives as it should', 'D 3': 'tied up' } as const;
    const stuck = devicesOf(showing(kestrel, symptom));
    expect(stuck).toContain('intermediate band: will not release');
    // The physics: so does a seized second roller. The band gives itself away in first, which
    // it turns into second; the roller leaves first alone.
    expect(stuck).toContain('second roller: seized');
    expect(cell(kestrel, 'intermediate band: will not release', 'D 1').drive.is).not.toBe('same');
    expect(cell(kestrel, 'second roller: seized', 'D 1').drive.is).toBe('same');
  });
});

test('drives forward in N and binds in R: the forward clutch stuck on', () => {
  for (const matrix of [kestrel, plover, curlew, cuckoo]) {
    const found = devicesOf(showing(matrix, { 'N N': 'drives', 'R R': 'tied up' }));
    expect(found).toEqual(['forward clutch: will not release']);
  }
});

test('starts in second, manual low binds: the second brake stuck on', () => {
  for (const matrix of [kestrel, curlew, cuckoo]) {
    const found = devicesOf(showing(matrix, { 'D 1': 'second gear', 'L 1': 'tied up' }));
    expect(found).toContain('second brake: will not release');
  }
  // The physics: the band on the same shell does the same, and parts from it in top.
  expect(devicesOf(showing(kestrel, { 'D 1': 'second gear', 'L 1': 'tied up' }))).toEqual([
    'intermediate band: will not release',
    'second brake: will not release',
  ]);
  expect(cell(kestrel, 'intermediate band: will not release', 'D 3').drive.is).toBe('tied up');
  expect(cell(kestrel, 'second brake: will not release', 'D 3').drive.is).toBe('same');
});

test('in series with all: the overdrive set’s one-way clutch and its splines take every D', () => {
  const all = ['D 1', 'D 2', 'D 3'] as const;
  const lost = Object.fromEntries(all.map((gear) => [gear, 'no drive' as const]));
  const found = showing(curlew, lost).map(({ faults }) => faults.map(faultText).join());
  expect(found).toContain('overdrive roller: slips');
  expect(found).toContain('output shaft: stripped at overdrive.ring');
  // Curlew's own lesson: the overdrive clutch dead is two complaints that seem apart.
  const dead = (gear: string) => cell(curlew, 'overdrive clutch: will not apply', gear);
  expect([dead('D 1').drive.is, dead('R R').drive.is]).toEqual(['same', 'neutral']);
  expect(dead('L 1').braking).toBe('lost');
});

test('no move in any range with good pressure: a shaft’s spline', () => {
  for (const [matrix, fault] of [
    [curlew, 'output shaft: stripped at overdrive.ring'],
    [lapwing, 'ring flange: stripped at short.ring'],
    [avocet, 'ring flange: stripped at short.ring'],
  ] as const) {
    const { cells } = rowOf(matrix, fault);
    for (const { drive } of cells) expect(drive.state).toBe('neutral');
  }
});

// How a gear works, as a driver would put it.
type Finding =
  | 'as it should' // under power and on coast
  | 'drives as it should' // under power
  | 'not as it should' // under power
  | 'no drive'
  | 'drives'
  | 'tied up'
  | 'no braking' // where there should be
  | 'brakes where it should not'
  | 'first gear again'
  | 'second gear';

type Symptom = Readonly<Record<string, Finding>>;

function showing(matrix: FaultMatrix, symptom: Symptom): FaultRow[] {
  return matrix.rows.filter((row) =>
    Object.entries(symptom).every(([gear, finding]) => shows(matrix, row, gear, finding)),
  );
}

function shows(matrix: FaultMatrix, row: FaultRow, gear: string, finding: Finding): boolean {
  const { drive, coast, braking } = row.cells[placeOf(matrix, gear)] as FaultCell;
  const ratio = (name: string) => matrix.gears[placeOf(matrix, name)]?.drive.ratio;
  const pulls = (name: string) => JSON.stringify(drive.ratio) === JSON.stringify(ratio(name));
  switch (finding) {
    case 'as it should':
      return drive.is === 'same' && coast.is === 'same';
    case 'drives as it should':
      return drive.is === 'same';
    case 'not as it should':
      return drive.is !== 'same';
    case 'no drive':
      return drive.is === 'neutral';
    case 'drives':
    case 'tied up':
      return drive.is === finding;
    case 'no braking':
      return drive.is === 'same' && braking === 'lost';
    case 'brakes where it should not':
      return drive.is === 'same' && braking === 'gained';
    case 'first gear again':
      return pulls('D 1');
    case 'second gear':
      return pulls('D 2');
  }
}

function placeOf({ gears }: FaultMatrix, gear: string): number {
  const place = gears.findIndex((other) => `${other.range} ${other.gear}` === gear);
  if (place < 0) throw new Error(`no gear ${gear}`);
  return place;
}

function rowOf(matrix: FaultMatrix, fault: string): FaultRow {
  const row = matrix.rows.find(({ faults }) => faults.map(faultText).join() === fault);
  if (!row) throw new Error(`no fault ${fault}`);
  return row;
}

function cell(matrix: FaultMatrix, fault: string, gear: string): FaultCell {
  return rowOf(matrix, fault).cells[placeOf(matrix, gear)] as FaultCell;
}

function classOf(matrix: FaultMatrix, fault: string): string[] {
  const place = matrix.rows.indexOf(rowOf(matrix, fault));
  const rows = matrix.classes.find((among) => among.rows.includes(place))?.rows ?? [];
  return rows.map((other) => (matrix.rows[other]?.faults ?? []).map(faultText).join());
}

/** The faults of devices among rows: what the rules are about. */
function devicesOf(rows: readonly FaultRow[]): string[] {
  return rows.flatMap(({ faults }) => faults.filter((f) => 'device' in f).map(faultText));
}

function matrixOf(name: string): FaultMatrix {
  const text = readFileSync(path.join(ROOT, 'trains', `${name}.train.yaml`), 'utf8');
  return faultMatrix(readTrain(text).train as Train);
}
