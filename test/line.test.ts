import { expect, it } from 'vitest';
import type { Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { seedOfRun } from './dice.ts';
import { fileOf, trainOf } from './line.ts';
import { lineOf } from './lineof.ts';
import { randomTrain } from './random-train.ts';
import { Tally } from './tally.ts';

const seed = seedOfRun();

it('says what the same train says in a file', () => {
  const { train } = readTrain(`
holdturn: 1
name: One line
input: shaft
output: [drum, hub]
forward: anticlockwise
sets:
  main: { sun: 30, ring: 66, planet: 18, planets: 3 }
  long: { sun: 30, ring: 70, inner: 14, outer: 12, pairs: 4 }
  tall: { sun: 20, ring: 88, steps: [24, 44] }
  low: { shares: long, sun: 24, pairs: 3, inner: 14 }
  far: { shares: main, ring: 90 }
  axle: { sides: [16, 16], pinion: 10, pinions: 2 }
  odd:
    wheels: { fixed: 100, idler: 20, outside: 140 }
    carried: [idler]
    meshes: [[fixed, idler], [outside, idler, internal]]
gear pairs:
  drop: { driver: [drum, 41], driven: [side shaft, 43] }
  back: { driver: [side shaft, 41], driven: [hub, 43], kind: chain }
joined:
  shaft: [main.sun, long.sun]
  drum: [main.carrier]
devices:
  low brake: { brake: main.ring }
  second band: { band: long.ring }
  first: { band: tall.ring }
  park pawl: { pawl: drum }
  lock: { clutch: [shaft, tall.sun] }
  sprag: { one-way: [main.ring, second race], lets: clockwise }
  roller: { one-way: [second race, case], lets: anticlockwise }
ranges:
  D: { "1": [low brake], "2": [low brake, lock] }
  N: { N: [] }
`);
  const line = [
    'in shaft = main.sun + long.sun; out drum = main.carrier; out hub; forward anticlockwise',
    'main 30:18:66 x3; long 30:14+12:70 x4; tall 20:24-44:88; low 24:14+: x3 shares long',
    'far :90 shares main; axle 16<10>16 x2; odd: fixed 100 ~ idler* 20, outside 140 ~~ idler',
    'drop: drum 41 drives side shaft 43; back: side shaft 41 drives by chain hub 43',
    'low brake holds main.ring; second band holds long.ring; first holds tall.ring by band',
    'park pawl holds drum; lock joins shaft + tall.sun',
    'sprag lets main.ring clockwise in second race; roller lets second race anticlockwise',
    'D 1 applies low brake; D 2 applies low brake + lock; N N applies nothing',
  ].join('; ');
  expect(trainOf(line)).toEqual(train);
  expect(trainOf(lineOf(train as Train))).toEqual(train);
});

it(`any train by chance is said in a line, with nothing lost (SEED=${seed})`, () => {
  const tally = new Tally({
    plain: 150,
    pair: 45,
    stepped: 50,
    sharing: 50,
    wheels: 60,
    bevel: 55,
    clutch: 400,
    brake: 200,
    band: 80,
    'one-way': 250,
    pawl: 0, // none by chance
  });
  for (let k = 0; k < 300; k++) {
    const train = randomTrain(seed + k);
    const line = lineOf(train);
    expect(line).not.toMatch(/\n/u);
    expect(trainOf(line, { name: train.name }), line).toEqual(train);
    for (const { kind } of [...train.sets, ...train.devices]) tally.met(kind);
  }
  tally.enough();
});

it('throws at a phrase that it does not know, and at what is no train', () => {
  expect(() =>
    trainOf('main 30:66 x3; in main.sun; out main.carrier; spring on main.ring'),
  ).toThrow('no phrase of a train: "spring on main.ring"');
  expect(() => trainOf('main 30:66 x3; in main.sun; out main.carier')).toThrow('main.carier');
  expect(readTrain(fileOf('main 30:66 x3; in main.sun')).train).toBeUndefined();
});
