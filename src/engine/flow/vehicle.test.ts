import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { trainOf } from '../../../test/line.ts';
import { ours } from '../../../test/trains.ts';
import { chart } from '../chart/index.ts';
import { fraction, over, type Rational, toText } from '../linear/index.ts';
import { type Train, withLoads } from '../train/index.ts';
import { readTrain, trainText } from '../trainfile/index.ts';
import { coast, flow, rollback, vehicleOf } from './index.ts';

function read(text: string): Train {
  const { train, problems } = readTrain(text);
  if (!train) throw new Error(JSON.stringify(problems));
  return train;
}

const kestrel = ours('kestrel-three-speed');

describe('a gear coasts the way it drives', () => {
  test('so in reverse the output turns backwards, and what brakes brakes', () => {
    const { travels, output, coast: reverse } = flow(kestrel, ['direct clutch', 'low brake']);
    expect([travels, output]).toEqual(['reverse', 'anticlockwise']);
    expect([reverse.state, reverse.engineBraking]).toEqual(['driving', true]);
    expect(reverse.speeds.get('main shaft')).toEqual({ num: -1, den: 1 });
  });
  test('and a brake that is added is felt: the Kestrel in reverse with the second brake on', () => {
    // The second roller holds the sun shell against anticlockwise; the turbine shaft turns it
    // clockwise in reverse, and so does the road: nothing is tied up.
    const worked = flow(kestrel, ['direct clutch', 'low brake', 'second brake']);
    expect([worked.drive.state, worked.travels, worked.coast.state]).toEqual([
      'driving',
      'reverse',
      'driving',
    ]);
    expect(worked.coast.devices.get('second roller')?.state).toBe('over-running');
    // Rolled forward it would be: the roller bears.
    expect(worked.rollback.inputFree.rolls).toBe(false);
    expect(worked.rollback.inputFree.heldBy).toContain('second roller');
  });
});

describe('forward', () => {
  const text = (forward: string, ranges: string) => `
holdturn: 1
input: shaft
output: drum
${forward}
sets:
  main: { sun: 30, ring: 66, planets: 3 }
joined: { shaft: [main.sun] }
gear pairs:
  drop: { driver: [main.carrier, 20], driven: [drum, 31] }
devices:
  low: { brake: main.ring }
  high: { clutch: [shaft, main.carrier] }
ranges:
${ranges}`;
  const low = '  D: { "1": [low], "2": [high] }';

  test('is what the file says, else what most gears that drive do', () => {
    expect(vehicleOf(read(text('', low))).forward).toBe('anticlockwise');
    expect(vehicleOf(read(text('forward: clockwise', low))).forward).toBe('clockwise');
    expect(vehicleOf(read(text('', '  N: { N: [] }'))).forward).toBe('clockwise');
    expect(vehicleOf(kestrel).forward).toBe('clockwise');
    expect(vehicleOf(kestrel).hasReverse).toBe(true);
  });
  test('so a negative ratio is no reverse behind one external pair', () => {
    const worked = flow(read(text('', low)), ['low']);
    expect(toText(worked.drive.ratio ?? { num: 0, den: 1 })).toBe('-124/25');
    expect([worked.travels, worked.coast.engineBraking]).toEqual(['forward', true]);
  });
  test('is read and written', () => {
    const train = read(text('forward: anticlockwise', low));
    expect(train.forward).toBe('anticlockwise');
  });
});

describe('what drives nothing', () => {
  const ratchet = read(`
holdturn: 1
input: shaft
output: drum
sets:
  main: { sun: 30, ring: 66, planets: 3 }
joined: { shaft: [main.sun], drum: [main.carrier] }
devices:
  sprag: { one-way: [drum, case], lets: clockwise }
  brake: { brake: main.ring }
`);
  test('is answered both ways, where they differ', () => {
    const { travels, coast: ahead, inReverse } = flow(ratchet, []);
    expect([travels, ahead.state]).toEqual(['forward', 'neutral']);
    expect([inReverse?.travels, inReverse?.coast.state]).toEqual(['reverse', 'tied up']);
    expect(inReverse?.rollback.inputFree.rolls).toBe(true);
    expect(coast(ratchet, [], 'reverse').state).toBe('tied up');
    expect(rollback(ratchet, [], 'reverse').inputHeld.rolls).toBe(true);
  });
  test('and once where they do not', () => {
    expect(flow(kestrel, []).inReverse).toBeUndefined();
    expect(flow(ratchet, ['brake']).inReverse).toBeUndefined();
  });
});

test('with a fault a gear travels as it did while nothing was wrong', () => {
  // The low sprag backwards: what first does to the output now is no matter for the road.
  const turned = kestrel.devices.map((device) => {
    return device.name === 'low sprag' ? { ...device, lets: 'anticlockwise' as const } : device;
  });
  const faulty = { ...kestrel, devices: turned, healthy: kestrel };
  expect(flow(faulty, ['forward clutch']).drive.state).toBe('neutral');
  expect(flow(faulty, ['forward clutch']).output).toBe('clockwise');
  expect(flow(faulty, ['direct clutch', 'low brake']).output).toBe('anticlockwise');
});

describe('the final drive', () => {
  const text = (key: string) => `
holdturn: 1
input: shaft
output: axle
${key}
sets:
  main: { sun: 30, ring: 66, planets: 3 }
joined: { shaft: [main.carrier] }
gear pairs:
  final: { driver: [main.ring, 17], driven: [axle, 62] }
devices:
  over: { brake: main.sun }
  through: { clutch: [shaft, main.sun] }
ranges:
  D: { "1": [through], "2": [over] }`;

  test('is left out of a gear where the file says which pair it is', () => {
    const { drive, beforeFinal } = flow(read(text('final drive: final')), ['over']);
    expect([drive.ratio, beforeFinal].map((r) => r && toText(r))).toEqual(['-341/136', '11/16']);
    expect(flow(read(text('')), ['over']).beforeFinal).toBeUndefined();
    const direct = flow(read(text('final drive: [final]')), ['through']).beforeFinal;
    expect(direct && toText(direct)).toBe('1');
  });
  test('is left out of a gear with a wheel held, whose other wheel turns twice as fast', () => {
    const file = readFileSync('trains/dunlin-final-drive.train.yaml', 'utf8');
    const dunlin = read(file.replace('gear pairs:', 'final drive: final drive\n\ngear pairs:'));
    const held = withLoads(dunlin, new Map([['right half shaft', 'held'] as const]));
    const [free, still] = [flow(dunlin, []), flow(held, [])];
    const texts = [free, still].map((its) => its.beforeFinal && toText(its.beforeFinal));
    expect(texts).toEqual(['-47/43', '-47/43']); // the transfer pair alone
    expect(still.drive.ratio).toEqual(over(free.drive.ratio as Rational, fraction(2)));
    const [row] = chart(held).gears;
    expect(row?.beforeFinal && toText(row.beforeFinal)).toBe('-47/43');
  });
  test('of two pairs side by side is one step, told only where both are driven alike', () => {
    const axles = { 'final drive': ['front pair', 'rear pair'] };
    const train = trainOf(
      'd 20<>20 x2; front pair: d.left 17 drives front shaft 51; rear pair: d.right 17 drives rear ' +
        'shaft 51; in crank = d.carrier; out front shaft; out rear shaft; D 1 applies nothing',
      axles,
    );
    const { drive, beforeFinal } = flow(train, []);
    expect([drive.ratio, beforeFinal].map((r) => r && toText(r))).toEqual(['-3', '1']);
    for (const shaft of ['front shaft', 'rear shaft']) {
      const held = flow(withLoads(train, new Map([[shaft, 'held'] as const])), []);
      expect([held.drive.ratio && toText(held.drive.ratio), held.beforeFinal]).toEqual([
        '-3/2',
        undefined,
      ]);
    }
    expect(() => flow({ ...train, finalDrive: ['middle pair'] }, [])).toThrow('middle pair');
  });
  test('is a gear pair of the file, and is written again', () => {
    const { train, problems } = readTrain(text('final drive: finel'));
    expect([train, problems[0]]).toMatchObject([
      undefined,
      { problem: 'unknown gear pair', near: 'final' },
    ]);
    const ends = read(text('final drive: final\nends: [pump end, cover end]'));
    expect(read(trainText(ends))).toEqual(ends);
    expect(ends.ends).toEqual(['pump end', 'cover end']);
  });
});
