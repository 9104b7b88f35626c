import { expect, test } from 'vitest';
import { ONE, opposite, programmeText, solve } from '../linear/index.ts';
import { doubtOf } from '../proof/index.ts';
import { trainOf } from '../../../test/line.ts';
import type { Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import { motionOf, pose } from './index.ts';

// The sun turns in, the carrier turns out, and three devices could hold the ring.
const ONE_SET = `
holdturn: 1
input: shaft
output: drum
sets:
  main: { sun: 30, ring: 66, planets: 3 }
joined: { shaft: [main.sun], drum: [main.carrier] }
devices:
  clutch: { clutch: [shaft, main.ring] }
  band: { band: main.ring }
  sprag: { one-way: [main.ring, case], lets: clockwise }
  roller: { one-way: [drum, main.ring], lets: anticlockwise }
`;

function motion(text: string) {
  const { train, problems } = readTrain(text);
  if (!train) throw new Error(JSON.stringify(problems));
  return motionOf(train);
}

test('a mesh that two sets say is one row, and a second sun that is another has its own', () => {
  const twin = 'main 30:18:66 x3; twin 30: shares main; out main.carrier; in shaft = main.sun';
  const meshes = [`${twin} + twin.sun`, twin].map((line) => motionOf(trainOf(line)).meshes.length);
  expect(meshes).toEqual([2, 3]);
});

test('a programme prints itself, a row a line: whose it is, and what it says of the members', () => {
  const posed = pose(motion(ONE_SET), {
    on: new Set(['band']),
    given: [{ member: 'shaft', speed: ONE }],
    reluctant: 'drum',
  });
  expect(programmeText(posed)).toBe(
    `
least |drum|
main.sun with main.planet   30·shaft + 18·main.planet - 48·drum = 0
main.planet with main.ring  18·main.planet - 66·main.ring + 48·drum = 0
band                        main.ring = 0
sprag                       main.ring ≥ 0
roller                      -drum + main.ring ≥ 0
shaft is given              shaft = 1
|drum|                      drum + |drum| ≥ 0
|drum|                      -drum + |drum| ≥ 0
`.trim(),
  );
});

test('what is tied, stuck or given backwards has its row too, and what holds nothing has none', () => {
  const split = ONE_SET.replace('output: drum', 'output: [drum, left]').replace(
    'joined: {',
    'gear pairs: { tail: { driver: [drum, 20], driven: [left, 20] } }\njoined: {',
  );
  const { train } = motion(split);
  const devices = train.devices.map((device) => {
    const stuck = { band: 'open', sprag: 'locked' }[device.name];
    return stuck ? ({ ...device, stuck } as typeof device) : device;
  });
  const posed = pose(motionOf({ ...train, devices } satisfies Train), {
    on: new Set(['clutch', 'band']),
    given: [{ member: 'shaft', speed: opposite(ONE) }],
    tied: ['drum', 'left'],
  });
  expect(programmeText(posed)).toBe(
    `
least 0
main.sun with main.planet   30·shaft + 18·main.planet - 48·drum = 0
main.planet with main.ring  18·main.planet - 66·main.ring + 48·drum = 0
drum with left              20·drum + 20·left = 0
clutch                      shaft - main.ring = 0
sprag                       main.ring = 0
roller                      -drum + main.ring ≥ 0
shaft is given              shaft = -1
left as drum                left - drum = 0
`.trim(),
  );
});

test('a broken answer is told in the names of the members', () => {
  const { base, ...its } = motion(ONE_SET);
  const posed = pose({ base, ...its }, { on: new Set(), given: [{ member: 'shaft', speed: ONE }] });
  const solution = solve(posed, base);
  if (solution.state === 'infeasible') throw new Error('the shaft turns');
  const ring = its.speedOf('main.ring').at[0] as number;
  const nums = solution.point.nums.map((num, column) => (column === ring ? -1 : num));
  const broken = { ...solution, point: { ...solution.point, nums } };
  expect(doubtOf(posed, broken)).toBe('main.planet with main.ring does not hold');
});
