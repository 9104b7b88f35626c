import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { toText } from '../linear/index.ts';
import { isZero } from '../reckon/index.ts';
import { CASE, gearsOf, type Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import { type Fact, flow, flowAt, isSpan, type Quantity, type Working } from './index.ts';

const kestrel = trainOf(readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8'));

function trainOf(text: string): Train {
  const { train, problems } = readTrain(text);
  if (!train) throw new Error(JSON.stringify(problems));
  return train;
}

function oneSet(devices: string): Train {
  return trainOf(`
holdturn: 1
input: shaft
output: drum
sets: { main: { sun: 30, ring: 66, planets: 3 } }
joined: { shaft: [main.sun], drum: [main.carrier] }
devices: { ${devices} }
`);
}

/** What is done with the load, a line each: who passes it to whom, and where it ends. */
function lines({ facts }: Pick<Working, 'facts'>): string[] {
  return facts.flatMap((fact) => lineOf(fact) ?? []);
}

function lineOf(fact: Fact): string | undefined {
  switch (fact.fact) {
    case 'carries':
      return `${fact.device}: ${fact.from} to ${fact.to}, ${fact.pushed}`;
    case 'works':
    case 'as one':
      return `${fact.set}: ${fact.ports.map(({ role, label }) => `${role} ${label}`).join(', ')}`;
    case 'holds':
      return `${fact.device} holds ${fact.member}, pushed ${fact.pushed}`;
    default:
      return undefined;
  }
}

function shown(quantity: Quantity | undefined): string {
  if (quantity === undefined) return 'none';
  return isSpan(quantity) ? 'a range' : toText(quantity);
}

describe('what is done with the load, in the order in which it travels', () => {
  test('both sets at work: the output set last, and then what holds it to the case', () => {
    expect(lines(flow(kestrel, ['forward clutch']).drive)).toEqual([
      'forward clutch: turbine shaft to front.ring, clockwise',
      'front: driven sun shell, driven main shaft, drives front.ring',
      'rear: drives sun shell, reacts rear.carrier, driven main shaft',
      'low sprag holds rear.carrier, pushed anticlockwise',
    ]);
  });
  test('a reaction that goes through a one-way clutch before the case takes it', () => {
    expect(lines(flow(kestrel, ['forward clutch', 'second brake']).drive)).toEqual([
      'forward clutch: turbine shaft to front.ring, clockwise',
      'front: reacts sun shell, driven main shaft, drives front.ring',
      'second roller: sun shell to second race, anticlockwise',
      'second brake holds second race, pushed anticlockwise',
    ]);
  });
  test('what bars a turn drives from where the hand or the end comes in', () => {
    const { drive } = flow(oneSet('band: { band: main.ring }, stop: { brake: drum }'), [
      'band',
      'stop',
    ]);
    expect(lines(drive)).toEqual([
      'main: drives shaft, reacts drum, reacts main.ring',
      'stop holds drum, pushed clockwise',
      'band holds main.ring, pushed anticlockwise',
    ]);
  });
  test('devices that share a reaction are pushed one way, though one alone could take it', () => {
    const two = oneSet('band: { band: main.ring }, brake: { brake: main.ring }');
    const { drive, coast } = flow(two, ['band', 'brake']);
    const pushed = (way: string) =>
      ['band', 'brake'].map((d) => `${d} holds main.ring, pushed ${way}`);
    expect(lines(drive).slice(1)).toEqual(pushed('anticlockwise'));
    expect(lines(coast).slice(1)).toEqual(pushed('clockwise'));
  });
});

describe('torques of a train that is tied up', () => {
  const both = oneSet('band: { band: main.ring }, clutch: { clutch: [shaft, drum] }');
  test('are for one unit at the end that is turned, the way it is turned', () => {
    const { drive, coast } = flow(both, ['band', 'clutch']);
    expect([drive.state, shown(drive.torques.get('input'))]).toEqual(['tied up', '1']);
    expect([coast.state, shown(coast.torques.get('output'))]).toEqual(['tied up', '1']);
  });
  test('also where that is anticlockwise', () => {
    const { coast } = flow({ ...both, forward: 'anticlockwise' }, ['band', 'clutch']);
    expect([coast.state, shown(coast.torques.get('output'))]).toEqual(['tied up', '-1']);
  });
});

test('power is told as a part of what is put in, whatever is taken out elsewhere', () => {
  const split = trainOf(`
holdturn: 1
input: shaft
output: drum
sets: { main: { sun: 30, ring: 78, planets: 3 } }
joined: { shaft: [main.carrier], drum: [main.ring], motor: [main.sun] }
`);
  const speed = (num: number) => ({ num, den: 1 });
  // The motor is pushed with 5/18 and turns the same way: it takes 5 of 10 units out.
  const work = flowAt(
    split,
    [],
    [
      { member: 'shaft', speed: speed(10) },
      { member: 'motor', speed: speed(18) },
    ],
  );
  const brought = work.branches.map(({ member, power }) => `${member} ${shown(power)}`);
  expect(brought).toEqual(['main.sun -1/2', 'main.carrier 1', 'main.ring -1/2']);
});

test('a speed that is given as a fraction is answered with whole torques', () => {
  const train = oneSet('band: { band: main.ring }');
  const half = flowAt(train, ['band'], [{ member: 'shaft', speed: { num: 1, den: 2 } }]);
  const whole = flowAt(train, ['band'], [{ member: 'shaft', speed: { num: 1, den: 1 } }]);
  expect(half.torques).toEqual(whole.torques);
  expect(shown(half.torques.get('output'))).toBe('-16/5');
});

const trains = readdirSync('trains').filter((file) => file.endsWith('.train.yaml'));

test.each(trains)(
  'in every gear of %s the case comes last, and what stands drives nothing',
  (file) => {
    const train = trainOf(readFileSync(`trains/${file}`, 'utf8'));
    for (const { on } of gearsOf(train)) {
      const { state, speeds, facts } = flow(train, on).drive;
      if (state !== 'driving') continue;
      const told = facts.filter((fact) => lineOf(fact) !== undefined).map(({ fact }) => fact);
      const first = told.indexOf('holds');
      expect(new Set(first < 0 ? ['holds'] : told.slice(first)), `[${on}]`).toEqual(
        new Set(['holds']),
      );
      for (const fact of facts) {
        if (fact.fact !== 'works') continue;
        for (const { role, member, label } of fact.ports) {
          const speed = speeds.get(member);
          const stands = label === CASE || (speed && isZero(speed));
          if (role === 'drives') expect(stands, `${member} in [${on}]`).toBeFalsy();
        }
      }
    }
  },
);
