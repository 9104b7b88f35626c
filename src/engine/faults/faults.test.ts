import fs from 'node:fs';
import { describe, expect, test } from 'vitest';
import { flow } from '../flow/index.ts';
import { ONE, over, type Rational, toNumber } from '../linear/index.ts';
import type { Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import { applyFault, faultNamed } from './index.ts';

const file = new URL('../../../trains/kestrel-three-speed.train.yaml', import.meta.url);
const kestrel = readTrain(fs.readFileSync(file, 'utf8')).train as Train;

function faulty(text: string): Train {
  const named = faultNamed(text, kestrel);
  if (!('fault' in named)) throw new Error(`${named.said} is not known`);
  return applyFault(kestrel, named.fault);
}

// Input over output under power / output over input on the over-run; -- neutral; `ok` as in a
// healthy train. Worked out by an independent solver in exact fractions, not by this engine;
// the output turned clockwise on the over-run in every gear.
const MATRIX = `
|fault                              |D 1       |D 2       |D 3     |L 1       |L 2       |R R       |N N|
|healthy                            |2.455/--  |1.455/--  |1/1     |2.455/.407|1.455/.688|-2.2/-.455|--/--|
|forward clutch: will not apply     |--/--     |--/--     |--/--   |--/--     |--/--     |ok        |ok|
|forward clutch: will not release   |ok        |ok        |ok      |ok        |ok        |TIED      |2.455/--|
|direct clutch: will not apply      |ok        |ok        |1.455/--|ok        |ok        |--/--     |ok|
|direct clutch: will not release    |1/1       |1/1       |ok      |TIED      |TIED      |ok        |ok|
|second brake: will not apply       |ok        |2.455/--  |ok      |ok        |ok        |ok        |ok|
|second roller: slips               |ok        |2.455/--  |ok      |ok        |ok        |ok        |ok|
|second brake: will not release     |1.455/--  |ok        |ok      |TIED      |ok        |-2.2/TIED |ok|
|intermediate band: will not apply  |ok        |ok        |ok      |ok        |1.455/--  |ok        |ok|
|intermediate band: will not release|1.455/.688|1.455/.688|TIED    |TIED      |ok        |TIED      |ok|
|low brake: will not apply          |ok        |ok        |ok      |2.455/--  |ok        |--/--     |ok|
|low sprag: slips                   |--/--     |ok        |ok      |ok        |ok        |ok        |ok|
|low sprag: backwards               |--/.407   |TIED      |TIED    |ok        |TIED      |ok        |ok|
|low sprag: seized                  |2.455/.407|TIED      |TIED    |ok        |TIED      |ok        |ok|
|low brake: will not release        |2.455/.407|TIED      |TIED    |ok        |TIED      |ok        |ok|
|second roller: backwards           |ok        |2.455/.688|TIED    |ok        |ok        |ok        |ok|
|second roller: seized              |ok        |1.455/.688|TIED    |ok        |ok        |ok        |ok|
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

function cellOf(train: Train, gear: string): string {
  const [rangeName, name] = gear.split(' ');
  const range = train.ranges.find((other) => other.name === rangeName);
  const on = range?.gears.find((other) => other.name === name)?.on ?? [];
  const { drive, coast } = flow(train, on);
  const ends = [drive.state === 'tied up', coast.state === 'tied up'];
  if (ends.every(Boolean)) return 'TIED';
  const shown = (ratio: Rational | undefined, tied: boolean | undefined) => {
    if (tied) return 'TIED';
    return ratio ? String(Math.round(toNumber(ratio) * 1000) / 1000).replace('0.', '.') : '--';
  };
  return `${shown(drive.ratio, ends[0])}/${shown(coast.ratio && over(ONE, coast.ratio), ends[1])}`;
}

describe('a fault is an edit of the train', () => {
  const on = ['forward clutch'];
  const state = (text: string) => flow(faulty(text), on).drive.state;

  test('a spline that has let go parts a member from its name', () => {
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
