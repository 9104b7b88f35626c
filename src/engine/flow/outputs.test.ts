import { describe, expect, test } from 'vitest';
import { applyFault, faultNamed } from '../faults/index.ts';
import { trainOf } from '../../../test/line.ts';
import { toText } from '../linear/index.ts';
import { type OutputLoad, type Train, withLoads } from '../train/index.ts';
import { readTrain, trainText } from '../trainfile/index.ts';
import { flow, flowAt, isSpan, ledgerOf, pushesOf, type Quantity } from './index.ts';

// A bevel differential behind a crown wheel.
const OPEN = `
holdturn: 1
name: an axle
input: pinion
output: [left half shaft, right half shaft]
sets:
  axle: { sides: [16, 16], pinions: 2, pinion: 10 }
gear pairs:
  crown: { driver: [pinion, 13], driven: [axle.carrier, 39], kind: internal }
joined:
  left half shaft: [axle.left]
  right half shaft: [axle.right]
devices:
  lock: { clutch: [left half shaft, axle.carrier] }
ranges:
  D: { open: [], locked: [lock] }
`;

function read(text: string): Train {
  const { train, problems } = readTrain(text);
  if (!train) throw new Error(JSON.stringify(problems));
  return train;
}

const axle = read(OPEN);

function stand(left: OutputLoad, right: OutputLoad): Train {
  const loads = new Map([
    ['left half shaft', left],
    ['right half shaft', right],
  ]);
  return withLoads(axle, loads);
}

function wrong(train: Train, text: string): Train {
  const named = faultNamed(text, train);
  if (!('fault' in named)) throw new Error(text);
  return applyFault(train, named.fault);
}

function shown(quantity: Quantity | undefined): string {
  if (quantity === undefined) return 'none';
  if (!isSpan(quantity)) return toText(quantity);
  return [quantity.from, quantity.to].map((end) => (end ? toText(end) : '')).join('..');
}

const torques = (train: Train, on: readonly string[] = []) => {
  const { drive } = flow(train, on);
  ledgerOf(train, pushesOf(train, drive)); // throws where an account does not balance
  return [drive.state, ...[...drive.outputs.values()].map(shown)];
};

describe('two half shafts of one axle', () => {
  test('straight ahead share the torque evenly through an open differential', () => {
    expect(torques(axle)).toEqual(['driving', '-3/2', '-3/2']);
    expect(shown(flow(axle, []).drive.ratio)).toBe('3');
    const { coast } = flow(axle, []);
    expect([coast.engineBraking, coast.speeds.get('right half shaft')]).toEqual([
      true,
      { num: 1, den: 1 },
    ]);
    expect(coast.torques.get('output')).toEqual({ num: 3, den: 1 });
  });
  test('and as the road likes through a locked one: nothing settles it', () => {
    const { drive } = flow(axle, ['lock']);
    expect(drive.state).toBe('driving');
    expect([...drive.outputs.values()].every(isSpan)).toBe(true);
    expect(shown(drive.torques.get('output'))).toBe('-3');
  });
  test('one held: the other turns at twice the speed, with half of the torque', () => {
    const held = stand('road', 'held');
    expect(torques(held)).toEqual(['driving', '-3/2']);
    expect(shown(flow(held, []).drive.ratio)).toBe('3/2');
    expect(flow(held, ['lock']).drive.state).toBe('tied up');
  });
  test('one held behind a pair of its own bears what its teeth put on it, not the case besides', () => {
    const pairs = trainOf(
      'axle 20<>20 x2; left pair: axle.left 20 drives left shaft 40; right pair: axle.right 20 ' +
        'drives right shaft 40; in crank = axle.carrier; out left shaft; out right shaft',
    );
    const { drive } = flow(withLoads(pairs, new Map([['left shaft', 'held'] as const])), []);
    // By statics: a half of the torque to each side gear, doubled by each pair's 20:40.
    const put = drive.branches.map(({ within, member, torque }) => {
      return `${within}, ${member}: ${shown(torque)}`;
    });
    expect(put.filter((line) => line.startsWith('left pair'))).toEqual([
      'left pair, axle.left: -1/2',
      'left pair, left shaft: -1',
      'left pair, case: 3/2',
    ]);
    const torque = { num: 1, den: 1 };
    const push = { pushed: 'anticlockwise', torque } as const;
    const meshes = { fact: 'meshes', pair: 'left pair', from: 'axle.left', to: 'left shaft' };
    expect(drive.facts).toContainEqual({ ...meshes, ...push });
    expect(drive.facts).toContainEqual({ fact: 'fixed', member: 'left shaft', ...push });
  });
  test('one on ice: an open differential drives nothing, a locked one drives the other', () => {
    expect(torques(stand('road', 'none'))).toEqual(['neutral', '0']);
    expect(torques(stand('road', 'none'), ['lock'])).toEqual(['driving', '-3']);
  });
  test('a stripped half shaft or a spider without teeth takes the drive from both', () => {
    for (const fault of ['right half shaft: stripped', 'axle.pinion: stripped']) {
      expect(flow(wrong(axle, fault), []).drive.state, fault).toBe('neutral');
      expect(flow(wrong(axle, fault), []).coast.state, fault).toBe('neutral');
    }
    // Locked, what is whole still drives: the road takes the stripped shaft along.
    const locked = flow(wrong(axle, 'right half shaft: stripped'), ['lock']).drive;
    expect([locked.state, ...[...locked.outputs.values()].map(shown)]).toEqual([
      'driving',
      '-3',
      '0',
    ]);
  });
  test('uneven side gears share unevenly, as their teeth', () => {
    // A centre differential as a plain planetary: carrier in, sun to the front, ring to the rear.
    const centre = trainOf(
      'centre 30:66 x3; in shaft = centre.carrier; out rear = centre.ring; out front = centre.sun',
    );
    expect(torques(centre)).toEqual(['driving', '-11/16', '-5/16']);
  });
  test('given speeds of their own, nothing ties them', () => {
    const given = [
      { member: 'pinion', speed: { num: 3, den: 1 } },
      { member: 'right half shaft', speed: { num: 0, den: 1 } },
    ];
    expect(shown(flowAt(axle, [], given).speeds.get('left half shaft'))).toBe('2');
  });
});

test('four wheels of two axles turn alike, and share what the centre gives each axle', () => {
  const four = trainOf(`
    centre 30:66 x3; front 16<>16; rear 16<>16; in shaft = centre.carrier;
    front case = centre.sun + front.carrier; rear case = centre.ring + rear.carrier;
    out front left = front.left; out front right = front.right;
    out rear left = rear.left; out rear right = rear.right`);
  expect(torques(four)).toEqual(['driving', '-5/32', '-5/32', '-11/32', '-11/32']);
  const ice = withLoads(four, new Map([['front left', 'none']]));
  expect(flow(ice, []).drive.state).toBe('neutral');
});

test('a list of outputs is read and written, and each mistake has its place', () => {
  expect([axle.output, axle.others]).toEqual(['left half shaft', ['right half shaft']]);
  expect(read(trainText(axle))).toEqual(axle);
  const twice = readTrain(OPEN.replace('right half shaft]', 'left half shaft]'));
  expect(twice.problems.map(({ problem }) => problem)).toContain('listed twice');
  const ground = readTrain(OPEN.replace('right half shaft]', 'case]'));
  expect(ground.problems.map(({ problem }) => problem)).toContain('case cannot turn');
  expect(
    readTrain(OPEN.replace('[left half shaft, right half shaft]', '[]')).train,
  ).toBeUndefined();
});
