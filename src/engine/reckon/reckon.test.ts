import { describe, expect, test } from 'vitest';
import { ONE, opposite, type Rational, toText } from '../linear/index.ts';
import { type Motion, motionOf, type ConeQuestion } from '../motion/index.ts';
import { type MemberName, outputsOf } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import {
  isSpan,
  judge,
  observe,
  portsOf,
  provedTorques,
  type Quantity,
  type Ruling,
  scaled,
  sharedReactions,
  type Torques,
  torquesOf,
  value,
} from './index.ts';

const SET = 'sets: { main: { sun: 30, ring: 66, planets: 3 } }\n';
const JOINED = 'joined: { shaft: [main.sun], drum: [main.carrier] }\n';

/** A set whose sun is the input and whose carrier the output; `devices` join its members. */
function oneSet(devices: string): Motion {
  return motion(`output: drum\n${SET}${JOINED}devices: { ${devices} }`);
}

function motion(text: string): Motion {
  const { train, problems } = readTrain(`holdturn: 1\ninput: shaft\n${text}`);
  if (!train) throw new Error(JSON.stringify(problems));
  return motionOf(train);
}

/** The shaft turns once and the drum is loaded, if it is `loaded`. */
function turned(train: Motion, on: readonly string[], loaded = true): Ruling {
  const given = [{ member: 'shaft', speed: ONE }];
  const { train: its } = train;
  const load = { reluctant: its.output, tied: outputsOf(its) };
  return judge(train, { on: new Set(on), given, ...(loaded && load) });
}

/** "5/16", or "0..5/16" for a span, with nothing where it has no limit. */
function shown(quantity: Quantity | undefined): string {
  if (quantity === undefined) return 'none';
  if (!isSpan(quantity)) return toText(quantity);
  return [quantity.from, quantity.to].map((end) => (end ? toText(end) : '')).join('..');
}

function speeds(ruling: Ruling, ...members: MemberName[]): string {
  const { speedOf } = observe(ruling);
  return members.map((member) => `${member} ${shown(speedOf(member))}`).join(', ');
}

/** What each device puts on its first member, for one unit of torque at the shaft. */
function torques(ruling: Ruling): string {
  return [...perInput(ruling).devices]
    .map(([{ name }, torque]) => `${name} ${shown(torque)}`)
    .join(', ');
}

function perInput(ruling: Ruling): Torques {
  const all = torquesOf(ruling, observe(ruling).slips, portsOf(ruling.motion));
  const { num, den } = provedTorques(ruling, []).given.get('shaft') as Rational;
  return scaled(all, { num: den, den: num });
}

const BAND = 'band: { band: main.ring }';
const BRAKE = 'brake: { brake: main.ring }';
const SPRAG = 'sprag: { one-way: [main.ring, case], lets: clockwise }';
const ROLLER = 'roller: { one-way: [last.ring, case], lets: clockwise }';
const CLUTCH = 'clutch: { clutch: [shaft, main.ring] }';

describe('speeds', () => {
  test('are settled where all motions agree: the ring held, 30 / (30 + 66) of a turn', () => {
    const ruling = turned(oneSet(BAND), ['band']);
    expect(speeds(ruling, 'drum', 'main.ring', 'case')).toBe('drum 5/16, main.ring 0, case 0');
    // 18 teeth of the planet: −30/18 in the carrier's frame, where the sun turns 11/16.
    expect(shown(observe(ruling).onPins.get('main.planet'))).toBe('-55/48');
  });
  test('are spans where they do not, up to what a one-way clutch allows', () => {
    expect(speeds(turned(oneSet(''), [], false), 'drum', 'main.ring')).toBe(
      'drum .., main.ring ..',
    );
    const free = turned(oneSet(SPRAG), [], false);
    expect(speeds(free, 'drum', 'main.ring')).toBe('drum 5/16.., main.ring 0..');
    expect(
      speeds(turned(oneSet(SPRAG.replace('clockwise', 'anticlockwise')), [], false), 'drum'),
    ).toBe('drum ..5/16');
  });
  test('reach from one clutch that holds to the next, each member in its proportion', () => {
    const lock = 'lock: { one-way: [drum, shaft], lets: anticlockwise }';
    const between = turned(oneSet(`${SPRAG}, ${lock}`), [], false);
    expect(speeds(between, 'drum', 'main.ring')).toBe('drum 5/16..1, main.ring 0..1');
  });
  test('are settled by a load that keeps its end as slow as it can', () => {
    expect(speeds(turned(oneSet(SPRAG), []), 'drum', 'main.ring')).toBe('drum 5/16, main.ring 0');
    expect(speeds(turned(oneSet(''), []), 'drum', 'main.ring')).toBe('drum 0, main.ring -5/11');
  });
  test('are none where nothing turns, and the slips too', () => {
    const ruling = turned(oneSet(`${CLUTCH}, ${BAND}`), ['clutch', 'band']);
    const { members, slips, drawn } = observe(ruling);
    expect([ruling.turns, members.size, [...slips.values()].map(shown)]).toEqual([
      false,
      0,
      ['0', '0'],
    ]);
    expect([...drawn.values()].every(({ num }) => num === 0)).toBe(true);
  });
});

describe('torques', () => {
  test('are settled where each device is needed: the ring takes 66/30 of the input', () => {
    expect(torques(turned(oneSet(BAND), ['band']))).toBe('band 11/5');
    expect(torques(turned(oneSet(`${BAND}, ${SPRAG}`), []))).toBe('band 0, sprag 11/5');
  });
  test('of a lock-up clutch are a part of the input: 66 of 96', () => {
    expect(torques(turned(oneSet(CLUTCH), ['clutch']))).toBe('clutch -11/16');
  });
  test('are spans where several could take a reaction, each from nothing to all', () => {
    const both = oneSet(`${BAND}, ${BRAKE}, ${SPRAG}`);
    expect(torques(turned(both, ['band']))).toBe('band 0..11/5, brake 0, sprag 0..11/5');
    expect(torques(turned(both, ['band', 'brake']))).toBe(
      'band 0..11/5, brake 0..11/5, sprag 0..11/5',
    );
  });
  test('of a clutch whose members change places are turned round', () => {
    const dog = 'dog: { clutch: [main.ring, shaft] }';
    expect(torques(turned(oneSet(`${CLUTCH}, ${dog}`), ['clutch', 'dog']))).toBe(
      'clutch -11/16..0, dog 0..11/16',
    );
  });
  test('leave out a one-way clutch that the load turns free', () => {
    const freed = 'free: { one-way: [main.ring, case], lets: anticlockwise }';
    expect(torques(turned(oneSet(`${BAND}, ${freed}`), ['band']))).toBe('band 11/5, free 0');
    const turnedRound = 'free: { one-way: [case, main.ring], lets: clockwise }';
    expect(torques(turned(oneSet(`${BAND}, ${turnedRound}`), ['band']))).toBe('band 11/5, free 0');
  });
  test('are shared between what holds together in different places', () => {
    // Any of them makes all three members one: sun to ring as above, sun to carrier past the teeth,
    // ring to carrier with the ring's whole reaction.
    const locks = ['shaft, main.ring', 'shaft, drum', 'main.ring, drum'];
    const three = oneSet(locks.map((pair, k) => `c${k}: { clutch: [${pair}] }`).join(', '));
    expect(torques(turned(three, ['c0', 'c1']))).toBe('c0 -11/16..0, c1 -1..0, c2 0');
    const ruling = turned(three, ['c0', 'c1', 'c2']);
    expect(torques(ruling)).toBe('c0 -11/16..0, c1 -1..0, c2 0..11/5');
    expect(names(ruling, 'c0', 'c1', 'c2')).toEqual([['c0', 'c1', 'c2']]);
  });
  test('bar a turn in balance, at the scale of the proof', () => {
    const ruling = turned(oneSet(`${CLUTCH}, ${BAND}`), ['clutch', 'band']);
    const { given, devices, reluctant } = provedTorques(ruling, []);
    const shaft = given.get('shaft') as Rational;
    const [clutch, band] = [...devices.values()] as [Rational, Rational];
    // The clutch hands what turns the shaft to the ring, and the band holds that.
    expect([reluctant.num, shaft.num > 0]).toEqual([0, true]);
    expect([toText(clutch), toText(band)]).toEqual([
      toText(opposite(shaft)),
      toText(opposite(shaft)),
    ]);
  });
});

describe('outputs that are tied to one speed', () => {
  const split = `output: [left, right]
${SET}joined: { shaft: [main.carrier], left: [main.sun], right: [main.ring] }
`;
  test('share the load as the teeth say: 30 and 66 of 96', () => {
    const ruling = turned(motion(split), []);
    const { tied, reluctant } = perInput(ruling);
    expect([...tied].map(([member, torque]) => `${member} ${shown(torque)}`)).toEqual([
      'left -5/16',
      'right -11/16',
    ]);
    expect(shown(reluctant)).toBe('-1');
  });
  test('share it in any way where a lock makes them one', () => {
    const ruling = turned(motion(`${split}devices: { lock: { clutch: [left, right] } }`), ['lock']);
    const { tied, reluctant } = perInput(ruling);
    expect([...tied.values()].map(shown)).toEqual(['-1..0', '-1..0']);
    expect([shown(reluctant), torques(ruling)]).toEqual(['-1', 'lock -5/16..11/16']);
  });
  test('are turned by one who bears the load of both', () => {
    const train = motion(`${split}devices: { lock: { clutch: [left, right] } }`);
    const question: ConeQuestion = {
      on: new Set(['lock']),
      given: [{ member: 'left', speed: ONE }],
      tied: ['left', 'right'],
      reluctant: 'shaft',
    };
    const ruling = judge(train, question);
    const all = torquesOf(ruling, observe(ruling).slips, []);
    expect([shown(all.given.get('left')), shown(all.reluctant)]).toEqual(['1', '-1']);
    expect([...all.tied.values()].map(shown)).toEqual(['0..1', '0..1']);
  });
});

test('reactions in two places have nothing to share', () => {
  const two = motion(`output: drum
sets: { main: { sun: 30, ring: 66, planets: 3 }, last: { sun: 30, ring: 66, planets: 3 } }
joined: { shaft: [main.sun], middle: [main.carrier, last.sun], drum: [last.carrier] }
devices: { ${BAND}, low: { brake: last.ring }, ${SPRAG}, ${ROLLER} }
`);
  const ruling = turned(two, ['band', 'low']);
  expect(names(ruling, 'band', 'low', 'sprag', 'roller')).toEqual([
    ['band', 'sprag'],
    ['low', 'roller'],
  ]);
  expect(names(ruling, 'band', 'low')).toEqual([]);
});

function names(ruling: Ruling, ...devices: string[]): string[][] {
  const asked = ruling.motion.train.devices.filter(({ name }) => devices.includes(name));
  return sharedReactions(ruling, asked).map((group) => group.map(({ name }) => name));
}

describe('nothing leaves unproved', () => {
  test('a question about a device that is not there is refused', () => {
    expect(() => turned(oneSet(BAND), ['clutch'])).toThrow(
      'no device is called clutch: there are band',
    );
  });
  test('a bound that its certificate does not prove throws', () => {
    const { programme, solution } = turned(oneSet(BAND), ['band']);
    if (solution.state !== 'optimal') throw new Error('the band makes it drive');
    expect(value({ programme, solution }, 1)).toEqual({ num: 5, den: 16 });
    const prices = { ...solution.prices, nums: solution.prices.nums.map((num) => -num) };
    expect(() => value({ programme, solution: { ...solution, prices } }, 1)).toThrow(
      'failed its check',
    );
  });
  test('bounds of what cannot be throw, and so do speeds of a train that stands', () => {
    const ruling = turned(oneSet(`${CLUTCH}, ${BAND}`), ['clutch', 'band']);
    expect(() => value(ruling, 1)).toThrow('of what cannot be');
  });
});
