import { describe, expect, it } from 'vitest';
import { Dice, seedOfRun } from '../../../test/dice.ts';
import { trainOf } from '../../../test/line.ts';
import { lineOf } from '../../../test/lineof.ts';
import { randomTrain } from '../../../test/random-train.ts';
import { OURS, ours } from '../../../test/trains.ts';
import { applyFault, faultNamed } from '../faults/index.ts';
import { flow } from '../flow/index.ts';
import {
  fraction,
  minus,
  over,
  plus,
  type Rational,
  times,
  toText,
  ZERO,
} from '../linear/index.ts';
import { motionOf } from '../motion/index.ts';
import { isFriction, type Train } from '../train/index.ts';
import { compoundLevers, type Lever, leversOf } from './index.ts';
import { Tally } from '../../../test/tally.ts';

/** "sun 0, carrier 66/96, ring 1": the levers of a train, by the names that its sets know. */
function levers(line: string): string[] {
  return leversOf(motionOf(trainOf(`in crank; out flange; ${line}`))).map(told);
}

function told({ nodes }: Lever): string {
  return nodes.map(({ member, at }) => `${member.replace('set.', '')} ${toText(at)}`).join(', ');
}

// The arms of plain and pair sets are those of H. L. Benford and M. B. Leising, "The Lever
// Analogy: A New Tool in Transmission Analysis", SAE 810102, 1981, from memory: from the carrier
// to the sun as the ring's teeth, to the ring as the sun's; of meshed pairs both on one side.
describe('the lever of', () => {
  it('a plain set has the carrier between, with arms as the ring to the sun', () => {
    const [lever] = levers('set 30:66');
    expect(lever).toBe('sun 0, carrier 11/16, ring 1');
  });

  it('meshed pairs has the ring between the carrier and the sun', () => {
    const [lever] = levers('set 30:+:70 x3');
    expect(lever).toBe('sun 0, ring 4/7, carrier 1');
  });

  it('a stepped planet has arms as its train value', () => {
    // 24/44 · 19/87 of the sun's speed reaches the ring, turned round.
    const [lever] = levers('set 24:44-19:87');
    const value = over(fraction(24 * 19), fraction(44 * 87));
    const carrier = over(fraction(1), plus(fraction(1), value));
    expect(lever).toBe(`sun 0, carrier ${toText(carrier)}, ring 1`);
  });

  it('two rows of planets on one carrier that nothing else ties are two, which cross at the carrier', () => {
    const rows =
      'set: near 30 ~ first* 18, outer 66 ~~ first, far 24 ~ second* 20, last 64 ~~ second';
    expect(levers(rows)).toEqual(['near 0, carrier 11/16, outer 1', 'last 0, carrier 3/11, far 1']);
  });

  it('a bevel differential has the carrier in the middle', () => {
    const [lever] = levers('set 16<>16');
    expect(lever).toBe('left 0, carrier 1/2, right 1');
  });

  it('a gear pair is pinned to the case, between where the wheels turn opposite ways', () => {
    const pair = (how: string) => levers(`set: crank 20 ${how} flange 30`)[0];
    expect(pair('drives')).toBe('crank 0, case 3/5, flange 1');
    expect(pair('drives internally')).toBe('crank 0, flange 1/3, case 1');
  });

  it('a set with a stripped wheel is none, for nothing ties its members', () => {
    const kestrel = ours('kestrel-three-speed');
    const named = faultNamed('front.sun: stripped', kestrel);
    if (!('fault' in named)) throw new Error('the fault is known');
    const within = leversOf(motionOf(applyFault(kestrel, named.fault))).map((l) => l.within);
    expect(within).toEqual([['rear']]);
  });
});

it('two sets that share two members are one lever with four nodes', () => {
  const motion = motionOf(ours('kestrel-three-speed'));
  const [lever, ...others] = compoundLevers(leversOf(motion));
  expect(others).toEqual([]);
  expect(lever?.within).toEqual(['front', 'rear']);
  const [shell, carrier, shaft, ring] = (lever as Lever).nodes.map(({ at }) => at);
  // With the rear carrier held, the shell to the shaft as the rear ring to the rear sun.
  const at = (place?: Rational) => minus(place as Rational, carrier as Rational);
  expect(toText(over(at(shell), at(shaft)))).toBe(toText(fraction(-84, 36)));
  expect([shell, ring].map((place) => toText(place as Rational))).toEqual(['0', '1']);
});

describe('straightness', () => {
  const seed = seedOfRun();

  it('in every gear of our trains every lever is straight, to the last digit', () => {
    for (const file of OURS) {
      const train = ours(file);
      const gears = train.ranges.flatMap((range) => range.gears);
      expect(leversOf(motionOf(train)).length, file).toBeGreaterThan(0);
      for (const { name, on } of gears) expect(bent(train, on), `${file} ${name}`).toEqual([]);
    }
  });

  it('so is it in trains by chance, with some devices on', () => {
    const tally = new Tally({ turning: 300, still: 150 });
    for (let k = 0; k < 100; k++) {
      const train = randomTrain(seed + k);
      const dice = new Dice(seed + k);
      const names = train.devices.filter(isFriction).map(({ name }) => name);
      const on = names.filter(() => dice.chance(0.3));
      expect(bent(train, on, tally), `SEED=${seed + k}, [${on}]: ${lineOf(train)}`).toEqual([]);
    }
    tally.enough();
  });
});

// The levers that some motion of a gear does not leave straight.
function bent(train: Train, on: readonly string[], tally?: Tally<'turning' | 'still'>): string[] {
  const { drive, coast } = flow(train, on);
  const motion = motionOf(train);
  const all = [...leversOf(motion), ...compoundLevers(leversOf(motion))];
  return [drive.drawn, coast.drawn].flatMap((drawn) => {
    const turns = [...drawn.values()].some(({ num }) => num !== 0);
    tally?.met(turns ? 'turning' : 'still', all.length);
    return all.filter((lever) => !isStraight(lever, motion, drawn)).map(told);
  });
}

function isStraight(
  { nodes }: Lever,
  { assembly }: ReturnType<typeof motionOf>,
  drawn: ReadonlyMap<string, Rational>,
): boolean {
  const speeds = nodes.map(({ body }) => drawn.get(assembly.bodies[body]?.label ?? '') ?? ZERO);
  const [first = ZERO, last = ZERO] = [speeds[0], speeds.at(-1)];
  return nodes.every(({ at }, k) => {
    return toText(plus(first, times(at, minus(last, first)))) === toText(speeds[k] as Rational);
  });
}
