import fs from 'node:fs';
import { describe, expect, test } from 'vitest';
import { coasting, flow, ratioOf, stateOf, underPower, vehicleOf } from '../flow/index.ts';
import type { Outcome } from './index.ts';
import { ONE, over, type Rational, toNumber } from '../linear/index.ts';
import { motionOf } from '../motion/index.ts';
import { judge, type Ruling } from '../reckon/index.ts';
import type { Train, Way } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import {
  applyFault,
  CheckFinder,
  everyFault,
  faultMatrix,
  faultNamed,
  faultText,
  roadSign,
} from './index.ts';

const file = new URL('../../../trains/kestrel-three-speed.train.yaml', import.meta.url);
const kestrel = readTrain(fs.readFileSync(file, 'utf8')).train as Train;

function faulty(text: string): Train {
  const named = faultNamed(text, kestrel);
  if (!('fault' in named)) throw new Error(`${named.said} is not known`);
  return applyFault(kestrel, named.fault);
}

// Input over output under power / output over input on coast; -- neutral; `ok` as in a
// healthy train. Worked out by an independent solver in exact fractions, not by this engine, with
// the output turned clockwise on coast. In reverse a vehicle coasts backwards: there two cells are
// reckoned anew by hand. The road turns the main shaft anticlockwise and the engine holds the sun
// shell back, so the rear set pushes its carrier anticlockwise, which the low sprag holds without the
// low brake; and the sun shell turns clockwise, which the second roller lets it.
const MATRIX = `
|fault                              |D 1       |D 2       |D 3     |L 1       |L 2       |R R       |N N|
|healthy                            |2.429/--  |1.429/--  |1/1     |2.429/.412|1.429/.7|-2.333/-.429|--/--|
|forward clutch: will not apply     |--/--     |--/--     |--/--   |--/--     |--/--     |ok        |ok|
|forward clutch: will not release   |ok        |ok        |ok      |ok        |ok        |TIED      |2.429/--|
|direct clutch: will not apply      |ok        |ok        |1.429/--|ok        |ok        |--/--     |ok|
|direct clutch: will not release    |1/1       |1/1       |ok      |TIED      |TIED      |ok        |ok|
|second brake: will not apply       |ok        |2.429/--  |ok      |ok        |ok        |ok        |ok|
|second roller: slips               |ok        |2.429/--  |ok      |ok        |ok        |ok        |ok|
|second brake: will not release     |1.429/--  |ok        |ok      |TIED      |ok        |-2.333/-.429|ok|
|intermediate band: will not apply  |ok        |ok        |ok      |ok        |1.429/--  |ok        |ok|
|intermediate band: will not release|1.429/.7|1.429/.7|TIED    |TIED      |ok        |TIED      |ok|
|low brake: will not apply          |ok        |ok        |ok      |2.429/--  |ok        |--/-.429  |ok|
|low sprag: slips                   |--/--     |ok        |ok      |ok        |ok        |ok        |ok|
|low sprag: backwards               |--/.412   |TIED      |TIED    |ok        |TIED      |ok        |ok|
|low sprag: seized                  |2.429/.412|TIED      |TIED    |ok        |TIED      |ok        |ok|
|low brake: will not release        |2.429/.412|TIED      |TIED    |ok        |TIED      |ok        |ok|
|second roller: backwards           |ok        |2.429/.7|TIED    |ok        |ok        |ok        |ok|
|second roller: seized              |ok        |1.429/.7|TIED    |ok        |ok        |ok        |ok|
`;
const [head = [], healthy = [], ...lines] = MATRIX.trim()
  .split('\n')
  .map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );

describe('the fault matrix of the common-sun train', () => {
  test.each([healthy, ...lines])('%s', (fault, ...cells) => {
    const train = fault === 'healthy' ? kestrel : faulty(fault as string);
    const expected = cells.map((cell, k) => (cell === 'ok' ? healthy[k + 1] : cell));
    expect(head.slice(1).map((gear) => cellOf(train, gear))).toEqual(expected);
  });
});

function outcome(ruling: Ruling, turned: 'input' | 'output') {
  const state = stateOf(ruling);
  return [state, state === 'driving' ? ratioOf(ruling, turned) : undefined];
}

function cellOf(train: Train, gear: string): string {
  const [rangeName, name] = gear.split(' ');
  const range = train.ranges.find((other) => other.name === rangeName);
  const on = range?.gears.find((other) => other.name === name)?.on ?? [];
  const { drive, coast } = flow(train, on);
  return shownCell(drive, coast);
}

function shownCell(drive: Outcome, coast: Outcome): string {
  const ends = [drive.state === 'tied up', coast.state === 'tied up'];
  if (ends.every(Boolean)) return 'TIED';
  const shown = (ratio: Rational | undefined, tied: boolean | undefined) => {
    if (tied) return 'TIED';
    return ratio ? String(Math.round(toNumber(ratio) * 1000) / 1000).replace('0.', '.') : '--';
  };
  return `${shown(drive.ratio, ends[0])}/${shown(coast.ratio && over(ONE, coast.ratio), ends[1])}`;
}

describe('the matrix of every fault', () => {
  const faults = lines
    .map(([text = '']) => faultNamed(text, kestrel))
    .flatMap((named) => {
      return 'fault' in named ? [named.fault] : [];
    });
  const matrix = faultMatrix(kestrel, { only: faults });

  test.each(lines)('%s', (fault, ...cells) => {
    const row = matrix.rows.find((other) => other.faults.map(faultText).join() === fault);
    const expected = cells.map((cell, k) => (cell === 'ok' ? healthy[k + 1] : cell));
    const found = row?.cells.map(({ drive, coast }) => shownCell(drive, coast));
    expect(found).toEqual(expected);
    const same = row?.cells.map(({ drive, coast }) => drive.is === 'same' && coast.is === 'same');
    expect(same).toEqual(expected.map((cell, k) => cell === healthy[k + 1]));
  });

  test('has two pairs that no road test parts, and parts every other line', () => {
    const classes = matrix.classes.map(({ rows }) =>
      rows.map((place) => matrix.rows[place]?.faults.map(faultText).join()),
    );
    expect(classes.filter((among) => among.length > 1)).toEqual([
      ['second brake: will not apply', 'second roller: slips'],
      ['low sprag: seized', 'low brake: will not release'],
    ]);
    expect(classes).toHaveLength(lines.length - 2);
    expect(matrix.classes.some(({ silent }) => silent)).toBe(false);
  });

  test('asks of two faults at once what it asks of the train with both', () => {
    const { rows, gears } = faultMatrix(kestrel, { only: faults, pairs: true });
    const pairs = rows.filter((row) => row.faults.length === 2);
    // Faults of one device exclude each other.
    const ofOne = (device: string) => faults.filter((f) => 'device' in f && f.device === device);
    const exclusive = kestrel.devices.reduce((sum, { name }) => {
      const count = ofOne(name).length;
      return sum + (count * (count - 1)) / 2;
    }, 0);
    expect(pairs).toHaveLength((faults.length * (faults.length - 1)) / 2 - exclusive);
    for (const { faults: both, cells } of pairs) {
      const train = both.reduce(applyFault, kestrel);
      const told = cells.map(({ drive }) => [drive.state, drive.ratio]);
      const motion = motionOf(train);
      const found = gears.map(({ on }) => outcome(judge(motion, underPower(train, on)), 'input'));
      expect(told, both.map(faultText).join(' + ')).toEqual(found);
    }
  });

  test('tells lost and gained engine braking, and what spins free or fast', () => {
    const { rows, gears } = faultMatrix(kestrel, { only: faults, spins: true });
    const cell = (fault: string, gear: string) => {
      const row = rows.find((other) => other.faults.map(faultText).join() === fault);
      return row?.cells[gears.findIndex((g) => `${g.range} ${g.gear}` === gear)];
    };
    expect(cell('intermediate band: will not apply', 'L 2')?.braking).toBe('lost');
    expect(cell('low sprag: seized', 'D 1')?.braking).toBe('gained');
    expect(cell('low sprag: seized', 'D 2')?.braking).toBe('same');
    // The front set alone with its carrier still: the sun turns back at ring over sun, 66/30.
    const neutral = cell('low sprag: slips', 'D 1')?.spins?.drive;
    expect(neutral?.fast.get('sun shell')).toEqual({ num: -7, den: 3 });
    expect(cell('second brake: will not apply', 'D 2')?.spins?.drive.free).toEqual(['second race']);
  });

  test('gives the first sign on the bench and on the road', () => {
    const finder = new CheckFinder(kestrel);
    const signs = (text: string) => {
      const row = matrix.rows.find((other) => other.faults.map(faultText).join() === text);
      const [sign, road] = [row && finder.sign(row.faults), row && roadSign(matrix, row)];
      const gear = road && `${road.gear.range} ${road.gear.gear} ${road.end} ${road.now.is}`;
      return [sign?.check, sign?.turns, gear];
    };
    const carrier = { hold: [], turn: 'rear.carrier', on: [] };
    expect(signs('low sprag: backwards')).toEqual([
      { ...carrier, way: 'clockwise' },
      false,
      'D 1 drive neutral',
    ]);
    expect(signs('low sprag: slips')).toEqual([
      { ...carrier, way: 'anticlockwise' },
      true,
      'D 1 drive neutral',
    ]);
    // A driver meets neutral before first gear.
    expect(signs('forward clutch: will not release')[2]).toBe('N N drive drives');
    expect(signs('intermediate band: will not apply')[2]).toBe('L 2 coast neutral');
  });
});

describe('every fault of every train of ours', () => {
  const folder = new URL('../../../trains/', import.meta.url);
  const files = fs.readdirSync(folder).filter((name) => name.endsWith('.train.yaml'));
  const trains = files.map((name) => {
    return [
      name,
      readTrain(fs.readFileSync(new URL(name, folder), 'utf8')).train as Train,
    ] as const;
  });

  test.each(trains)('is written and read back: %s', (_, train) => {
    const faults = everyFault(train);
    for (const fault of faults) expect(faultNamed(faultText(fault), train)).toEqual({ fault });
    expect(new Set(faults.map(faultText)).size).toBe(faults.length);
  });

  // The matrix shares what faults have in common; here each faulty train is asked by itself.
  test.each(trains)('does in the matrix what it does by itself: %s', (_, train) => {
    const { gears, rows } = faultMatrix(train);
    for (const { faults, cells } of rows) {
      const broken = faults.reduce(applyFault, train);
      const motion = motionOf(broken);
      const found = gears.map(({ on }) => {
        const drive = judge(motion, underPower(train, on));
        const [way] = vehicleOf(train).ways(on) as [Way];
        const coast = judge(motion, coasting(train, on, way));
        return [outcome(drive, 'input'), outcome(coast, 'output')].flat();
      });
      expect(
        cells.map(({ drive, coast }) => [drive.state, drive.ratio, coast.state, coast.ratio]),
        faults.map(faultText).join(),
      ).toEqual(found);
    }
  });
});

describe('a fault is an edit of the train', () => {
  const on = ['forward clutch'];
  const state = (text: string) => flow(faulty(text), on).drive.state;

  test('a spline that has stripped parts a member from its name', () => {
    expect(state('sun shell: stripped')).toBe('neutral');
    expect(state('sun shell: stripped at front.sun')).toBe('neutral');
    expect(state('main shaft: stripped at rear.ring')).toBe('neutral');
    // The output is where the load is: parted from the front carrier it cannot be reached.
    expect(state('main shaft: stripped at front.carrier')).toBe('neutral');
  });
  test('a wheel without teeth meshes nothing, whichever wheel it is', () => {
    for (const wheel of ['front.sun', 'front.ring', 'front.planet', 'rear.sun']) {
      expect(state(`${wheel}: stripped`)).toBe('neutral');
    }
  });
  test('a seized planet makes its set one piece', () => {
    const { drive } = flow(faulty('front.planet: seized'), on);
    expect(drive.speeds.get('front.sun')).toEqual(drive.speeds.get('front.carrier'));
    expect(drive.ratio).toEqual({ num: 1, den: 1 });
  });
  test('a part left out takes all that it carries with it', () => {
    expect(state('sprag cage: left out')).toBe('neutral');
    expect(state('common sun: left out')).toBe('neutral');
    // The low sprag is another part's.
    expect(state('low pack: left out')).toBe('driving');
    expect(state('front thrust washer: left out')).toBe('driving');
  });

  test('a set left out has members that mesh nothing', () => {
    expect(state('rear: left out')).toBe('neutral');
  });
});

describe('a fault that is not known says what is', () => {
  test.each([
    ['low spragg: backwards', 'name', 'low spragg', 'low sprag'],
    ['low sprag: upside down', 'fault', 'upside down', 'backwards'],
    ['low brake: backwards', 'fault', 'backwards', 'will not apply'],
    ['main shaft: stripped at front.sun', 'place', 'front.sun', 'rear.ring'],
    ['low sprag', 'fault', '', 'seized'],
  ])('%s', (text, unknown, said, known) => {
    const named = faultNamed(text, kestrel);
    expect(named).toMatchObject({ unknown, said });
    expect('known' in named && named.known).toContain(known);
  });
});

describe('a friction device that slips', () => {
  const friction = [
    'forward clutch',
    'direct clutch',
    'second brake',
    'intermediate band',
    'low brake',
  ];
  const only = friction.flatMap((device) =>
    (['will not apply', 'slips'] as const).map((is) => ({ what: 'device', device, is }) as const),
  );
  const { rows, classes } = faultMatrix(kestrel, { only });

  test.each(friction)('slips where the train cannot be without it: %s', (device) => {
    const place = 2 * friction.indexOf(device);
    const [dead = [], weak = []] = rows.slice(place, place + 2).map(({ cells }) => cells);
    const shown = (end: (typeof dead)[number]['drive']) => [end.state, end.ratio];
    dead.forEach((cell, k) => {
      for (const end of ['drive', 'coast'] as const) {
        const now = weak[k]?.[end];
        expect(now?.is).toBe(cell[end].is === 'same' ? 'same' : 'slips');
        // Above the load that it carries, the gear is that without it.
        expect(now && shown(now)).toEqual(shown(cell[end]));
      }
    });
    // The road parts the two, for below that load the gear is there.
    expect(classes.find((among) => among.rows.includes(place))?.rows).not.toContain(place + 1);
  });

  test('loses no braking, and shows nothing to hands', () => {
    const band = rows[2 * friction.indexOf('intermediate band') + 1];
    expect(band?.cells[4]).toMatchObject({ coast: { is: 'slips' }, braking: 'same' });
    expect(new CheckFinder(kestrel).sign(band?.faults ?? [])).toBe(undefined);
  });

  test('beside another fault, slips where that lets it carry', () => {
    const seized = { what: 'one-way', device: 'low sprag', is: 'seized' } as const;
    const weak = { what: 'device', device: 'low brake', is: 'slips' } as const;
    const { rows: both } = faultMatrix(kestrel, { only: [seized, weak], pairs: true });
    // What the seized sprag ties up no weak brake frees, and in L 1 the sprag holds for it.
    expect(both[1]?.cells[3]?.coast.is).toBe('slips');
    expect(both[2]?.cells[3]?.coast.is).toBe('same');
    expect(both[2]?.cells[1]?.drive.is).toBe('tied up');
  });

  test('is among all faults only where it is asked for', () => {
    const texts = everyFault(kestrel, { slipping: true }).map(faultText);
    expect(texts).toContain('low brake: slips');
    expect(everyFault(kestrel).map(faultText)).not.toContain('low brake: slips');
  });
});
