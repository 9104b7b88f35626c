import { describe, expect, test } from 'vitest';
import { opposite, type Rational, times, toNumber, toText } from '../linear/index.ts';
import { trainOf } from '../../../test/line.ts';
import { OURS, ours } from '../../../test/trains.ts';
import { gearsOf, type Train } from '../train/index.ts';
import { type Fact, flow, flowAt, isSpan, type Quantity } from './index.ts';

// "3/2", or "0..10/7" for a span, with nothing where it has no limit.
function shown(quantity: Quantity | undefined): string {
  if (quantity === undefined) return 'none';
  if (!isSpan(quantity)) return toText(quantity);
  return [quantity.from, quantity.to].map((end) => (end ? toText(end) : '')).join('..');
}

const ONE_SET = `
  main 30:66 x3; in shaft = main.sun; out drum = main.carrier;
  band holds main.ring; brake holds main.ring; sprag lets main.ring clockwise`;

const TWO_SETS = `
  main 30:66 x3; low 30:66 x3; in shaft = main.sun; middle = main.carrier + low.sun; out drum = low.carrier;
  band holds main.ring; sprag lets main.ring clockwise;
  low brake holds low.ring; low roller lets low.ring clockwise`;

describe('a reaction that several devices could take', () => {
  const torques = (on: string[]) => {
    const { drive } = flow(trainOf(ONE_SET), on);
    return Object.fromEntries(
      [...drive.devices].map(([name, { torque }]) => [name, shown(torque)]),
    );
  };
  test('is settled where there is only one', () => {
    expect(torques([])).toEqual({ band: '0', brake: '0', sprag: '11/5' });
  });
  test('is a span from nothing to all of it where there are two or three', () => {
    expect(torques(['band'])).toEqual({ band: '0..11/5', brake: '0', sprag: '0..11/5' });
    expect(torques(['band', 'brake'])).toEqual({
      band: '0..11/5',
      brake: '0..11/5',
      sprag: '0..11/5',
    });
  });
  test('of seven devices, too, whatever their order', () => {
    const brakes = ['a', 'b', 'c', 'd', 'e', 'f'];
    const more = brakes.map((name) => `${name} holds main.ring`).join('; ');
    const { drive, coast } = flow(trainOf(`${ONE_SET}; ${more}`), brakes);
    for (const name of [...brakes, 'sprag']) {
      expect(shown(drive.devices.get(name)?.torque)).toBe('0..11/5');
    }
    expect(shown(coast.devices.get('a')?.torque)).toBe('-11/5..0');
    expect(shown(coast.devices.get('sprag')?.torque)).toBe('0');
    expect(drive.facts).toContainEqual({ fact: 'shares', devices: ['sprag', ...brakes] });
  });
  test('leaves the set, the ends and the efficiency settled, and says that it is shared', () => {
    const { drive } = flow(trainOf(ONE_SET), ['band']);
    expect(drive.branches.map(({ torque }) => isSpan(torque))).toEqual([false, false, false]);
    expect([...drive.torques].map(([end, torque]) => `${end} ${shown(torque)}`)).toEqual([
      'input 1',
      'output -16/5',
      'case 11/5',
    ]);
    expect(drive.efficiency?.state).toBe('runs');
    expect(drive.facts).toContainEqual({ fact: 'shares', devices: ['band', 'sprag'] });
  });
  test('is told apart from another that others could take', () => {
    const { drive } = flow(trainOf(TWO_SETS), ['band', 'low brake']);
    const shared = drive.facts.filter(({ fact }) => fact === 'shares');
    expect(shared).toEqual([
      { fact: 'shares', devices: ['band', 'sprag'] },
      { fact: 'shares', devices: ['low brake', 'low roller'] },
    ]);
    expect(shown(drive.devices.get('low brake')?.torque)).toBe('0..176/25');
  });
  test('of two like sets side by side is told of both at once: no way, and nobody stands still', () => {
    const twins = (a: string, b: string, hub: string) =>
      `${a} 30:66 x3; ${b} 20:44 x3; ${hub} = ${a}.carrier + ${b}.carrier`;
    const line =
      `${twins('a', 'b', 'hub')}; in crank = a.sun + b.sun; drum = a.ring + b.ring; band holds drum; ` +
      `sprag lets drum clockwise`;
    const told = (train: Train, on: string[]) => {
      const { drive, coast } = flow(train, on);
      return [drive, coast].map(({ facts }) =>
        facts.filter(({ fact }) => ['works', 'sets share', 'shares'].includes(fact)),
      );
    };
    const both = { fact: 'sets share', sets: ['a', 'b'] };
    expect(told(trainOf(`${line}; out hub`), ['band'])).toEqual([
      [both, { fact: 'shares', devices: ['band', 'sprag'] }],
      [both],
    ]);
    const four =
      `${line}; ${twins('c', 'd', 'far')}; shaft = hub + c.sun + d.sun; ` +
      'outer = c.ring + d.ring; low holds outer; out far';
    const [under] = told(trainOf(four), ['band', 'low']);
    expect(under?.filter(({ fact }) => fact !== 'shares')).toEqual([
      both,
      { fact: 'sets share', sets: ['c', 'd'] },
    ]);
  });
  test('falls on the friction device alone on coast, where the one-way clutch over-runs', () => {
    const { coast } = flow(trainOf(ONE_SET), ['band']);
    expect(coast.engineBraking).toBe(true);
    expect(shown(coast.devices.get('band')?.torque)).toBe('-11/5');
    expect(coast.devices.get('sprag')).toMatchObject({ state: 'free', slip: { num: 0 } });
  });
});

describe('speeds that nothing settles', () => {
  test('are spans with the limit that a one-way clutch puts', () => {
    const { drive } = flow(ours('kestrel-three-speed'), ['forward clutch']);
    expect(shown(drive.speeds.get('second race'))).toBe('..-49/51');
    expect(drive.devices.get('second roller')).toMatchObject({ state: 'free' });
    expect(drive.facts).toContainEqual({ fact: 'free', members: ['second race'] });
  });
  test('are not told of planets that nobody counted', () => {
    const text = ONE_SET.replace('30:66', '30:+:66');
    const { drive } = flow(trainOf(text), ['band']);
    expect([...drive.speeds.keys()].filter((name) => /inner|outer/.test(name))).toEqual([]);
    const counted = flow(trainOf(text.replace('+', '17+')), ['band']).drive;
    expect([...counted.onPins.keys()]).toEqual(['main.inner']);
  });
});

test('power that goes round is as much as the clutch that closes the circle passes', () => {
  const train = ours('lapwing-six-speed');
  const on = train.ranges.flatMap(({ gears }) => gears).find(({ name }) => name === '5')?.on ?? [];
  const { drive } = flow(train, on);
  // In fifth the input drives the long carrier, and through the first set, the reverse clutch and
  // the long sun a part of it comes back: the clutch passes just that.
  const torque = drive.devices.get('reverse clutch')?.torque as Rational;
  const speed = drive.speeds.get('long.sun') as Rational;
  const passed = times(torque, speed);
  expect(drive.recirculating).toEqual(passed.num < 0 ? opposite(passed) : passed);
  expect(toNumber(drive.recirculating)).toBeGreaterThan(0);
  expect(drive.circling).toHaveLength(2);
});

test('where planets stand on their pins no power goes round', () => {
  // In third the overdrive turns as one: its ring hands the sun back a part, in one piece.
  const { drive } = flow(ours('curlew-four-speed-overdrive'), [
    'forward clutch',
    'direct clutch',
    'second brake',
  ]);
  expect(toText(drive.ratio ?? { num: 0, den: 1 })).toBe('1');
  expect([toText(drive.recirculating), drive.circling]).toEqual(['0', []]);
  expect(drive.facts.map(({ fact }) => fact)).not.toContain('recirculates');
});

test('power that goes round is as much as the shell that closes the circle passes', () => {
  const train = ours('heron-eight-speed');
  const { drive } = flow(train, train.ranges[0]?.gears[1]?.on ?? []);
  // By hand: the middle ring pushes the middle shell with 640/559 of the input torque at 93/128 of
  // its speed; the entry carrier takes that in, and the entry ring hands it back to the shaft.
  expect(toText(drive.recirculating)).toBe('465/559');
});

describe('two given speeds', () => {
  const split = trainOf(
    'main 30:78 x3; in shaft = main.carrier; out drum = main.ring; motor = main.sun',
  );
  const given = (speeds: Record<string, number>) =>
    Object.entries(speeds).map(([member, num]) => ({ member, speed: { num, den: 1 } }));
  test('settle the third, and the lever settles the torques', () => {
    const work = flowAt(split, [], given({ shaft: 1220, motor: 0 }));
    expect(shown(work.speeds.get('drum'))).toBe('21960/13');
    expect([...work.torques].map(([end, torque]) => `${end} ${shown(torque)}`)).toEqual([
      'shaft 1',
      'motor -5/18',
      'output -13/18',
      'case 0',
    ]);
  });
  test('may hold the output still and yet load it', () => {
    const work = flowAt(split, [], given({ shaft: 5, motor: 18 }));
    expect([work.state, shown(work.speeds.get('drum'))]).toEqual(['driving', '0']);
    expect(shown(work.torques.get('shaft'))).toBe('1');
    expect(shown(work.torques.get('output'))).toBe('-13/18');
  });
  test('that cannot be together are tied up', () => {
    const work = flowAt(split, [], given({ shaft: 1, motor: 1, drum: 2 }));
    expect(work.state).toBe('tied up');
  });
  test('one alone leaves the output free to stand', () => {
    expect(flowAt(split, [], given({ shaft: 1 })).state).toBe('neutral');
  });
});

describe('losses', () => {
  test('a train whose every path goes against the sense of power locks itself', () => {
    // Wheels 75, 18/17, 71 on one arm (Bevan, The Theory of Machines, chapter 11, example 6):
    // driven from the last wheel it needs more than it can give.
    const text = `
      creeper: fixed 75 ~ near* 18, far* 17 ~ last 71; case = creeper.fixed;
      planet = creeper.near + creeper.far; in shaft = creeper.last; out drum = creeper.carrier`;
    const { drive, coast } = flow(trainOf(text), []);
    expect(drive.efficiency).toMatchObject({ state: 'self-locking' });
    expect(coast.efficiency?.state).toBe('runs');
  });
  test('are none where nothing turns on its pins', () => {
    const { drive } = flow(ours('kestrel-three-speed'), ['forward clutch', 'direct clutch']);
    expect(drive.efficiency).toEqual({ state: 'runs', value: { num: 1, den: 1 } });
    expect(drive.facts.filter(({ fact }) => fact === 'as one')).not.toHaveLength(0);
  });
});

describe('the reasons', () => {
  // Each thing said must begin where the load already is; only power that goes round, or a
  // reaction that comes back, may begin elsewhere.
  test.each(OURS)('of %s follow the load', (name) => {
    const train = ours(name);
    for (const { on } of gearsOf(train)) {
      const { drive } = flow(train, on);
      if (drive.state !== 'driving' || drive.recirculating.num !== 0) continue;
      const reached = new Set<string>();
      for (const fact of drive.facts) {
        for (const from of sources(fact)) expect(reached, `${name} ${on}: ${from}`).toContain(from);
        for (const to of reaches(fact)) reached.add(to);
      }
    }
  });
});

function sources(fact: Fact): string[] {
  if (fact.fact === 'carries' || fact.fact === 'meshes') return [fact.from];
  if (fact.fact === 'holds') return [fact.member];
  if (fact.fact === 'works')
    return fact.ports.flatMap(({ role, label }) => (role === 'drives' ? [label] : []));
  return [];
}

function reaches(fact: Fact): string[] {
  if (fact.fact === 'turned') return [fact.member];
  if (fact.fact === 'carries' || fact.fact === 'meshes') return [fact.to];
  if (fact.fact === 'works' || fact.fact === 'as one') return fact.ports.map(({ label }) => label);
  return [];
}
