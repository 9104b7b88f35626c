import { describe, expect, it } from 'vitest';
import { coneOf, type Terms } from '../../../test/cone.ts';
import { Dice, seedOfRun } from '../../../test/dice.ts';
import { lineOf } from '../../../test/lineof.ts';
import { randomTrain } from '../../../test/random-train.ts';
import { OURS, ours } from '../../../test/trains.ts';
import { flow, isSpan } from '../flow/index.ts';
import { fraction, ONE, plus, type Rational, times, toText, ZERO } from '../linear/index.ts';
import { assemble, isFriction, type MemberName, type Train, appliedIn } from '../train/index.ts';
import { hand, pull, type Pull, pulledTo, type PullWay } from './index.ts';
import { Tally } from '../../../test/tally.ts';

const seed = seedOfRun();
const kestrel = ours('kestrel-three-speed');
const first = { on: ['forward clutch'], hold: [], given: [{ member: kestrel.input, speed: ONE }] };

describe('a pull', () => {
  const from = flow(kestrel, first.on).drive.drawn;

  it('stops where a one-way clutch blocks, and says which', () => {
    const found = pull(kestrel, { ...first, pull: kestrel.output, from }) as Pull;
    expect(toText(found.from.get('main shaft') as Rational)).toBe('7/17');
    expect(found.down.to && toText(found.down.to)).toBe('7/17');
    expect(found.down.stop).toEqual({
      clutches: ['low sprag'],
      devices: ['forward clutch'],
      hands: ['turbine shaft'],
    });
    expect(found.up.to).toBeNull();
    expect(found.up.stop).toBeUndefined();
    // The sun shell follows: 36·shell + 84·ring = 120·carrier.
    expect(toText(found.up.perTurn.get('sun shell') as Rational)).toBe('10/3');
  });

  it('says what is free to turn otherwise', () => {
    const found = pull(kestrel, { ...first, pull: kestrel.output, from }) as Pull;
    expect([...found.up.free]).toEqual(['second race']);
  });

  it('is cheap to follow, and does not go beyond a stop', () => {
    const found = pull(kestrel, { ...first, pull: 'rear.carrier', from }) as Pull;
    const speeds = pulledTo(found, -3);
    expect(speeds.get('rear.carrier')).toBe(0);
    expect(pulledTo(found, 0.5, speeds)).toBe(speeds);
    expect(speeds.get('rear.carrier')).toBe(0.5);
  });

  it('of what no speeds allow is none', () => {
    const given = [...first.given, { member: kestrel.input, speed: ZERO }];
    expect(pull(kestrel, { ...first, given, pull: kestrel.output })).toBeUndefined();
  });
});

describe('every train of ours and trains by chance', () => {
  const scenes = [...everyScene()];

  it('with nothing given a pull goes for ever just where hands find that it turns', () => {
    const tally = new Tally({ turns: 500, blocked: 200, follows: 5000, free: 1500 });
    everywhere(scenes, (train, on, member) => {
      const found = pull(train, { on, hold: [], given: [], pull: member, from: new Map() }) as Pull;
      for (const [way, end] of [
        ['clockwise', found.up],
        ['anticlockwise', found.down],
      ] as const) {
        const felt = hand(train, { hold: [], turn: member, way, on });
        expect(end.to).toEqual(felt.turns ? null : ZERO);
        tally.met(felt.turns ? 'turns' : 'blocked');
        if (!felt.turns) continue;
        for (const [name, speed] of felt.moves) {
          const sign = way === 'clockwise' ? 1 : -1;
          const here = times(end.perTurn.get(name) ?? ZERO, fraction(sign));
          tally.met(isSpan(speed) ? 'free' : 'follows');
          if (isSpan(speed)) expect(end.free).toContain(name);
          else expect([name, here]).toEqual([name, speed]);
        }
      }
    });
    tally.enough();
  });

  it('with the input given, the load is where the pull of the output is nearest to rest', () => {
    // Hands know no road that ties several outputs.
    const alone = scenes.filter(({ train }) => !train.others);
    const ends = alone.map((scene) => ({ ...scene, members: [scene.train.output] }));
    const tally = new Tally({ driving: 60, neutral: 10, 'tied up': 8 });
    everywhere(ends, (train, on) => {
      const { state, ratio, drawn } = flow(train, on).drive;
      const given = [{ member: train.input, speed: ONE }];
      const found = pull(train, { on, hold: [], given, pull: train.output, from: drawn });
      tally.met(state);
      if (state === 'tied up') return expect(found).toBeUndefined();
      const { up, down } = found as Pull;
      const rests = (!up.to || up.to.num >= 0) && (!down.to || down.to.num <= 0);
      expect(rests).toBe(state === 'neutral');
      if (!ratio) return undefined;
      const nearest = ratio.num > 0 ? down.to : up.to;
      return expect(nearest && toText(times(nearest, ratio))).toBe('1');
    });
    tally.enough();
  });

  it('every row holds on the way, by a cone that shares no line with the engine', () => {
    const tally = new Tally({ letting: 600, level: 5000 });
    everywhere(scenes, (train, on, member) => {
      const given = [{ member: train.input, speed: ONE }];
      const found = pull(train, { on, hold: [], given, pull: member });
      if (!found) return;
      const cone = coneOf(train, on);
      for (const at of [speedsAt(found, found.up, 1), speedsAt(found, found.down, -1)]) {
        for (const line of cone.letting) {
          const value = sumOf(line, at);
          if (!value) continue;
          tally.met('letting');
          expect(value.num).toBeGreaterThanOrEqual(0);
        }
        for (const line of cone.level) {
          const value = sumOf(line, at);
          if (!value) continue;
          tally.met('level');
          expect(value).toEqual(ZERO);
        }
      }
    });
    tally.enough();
  });
});

// At the stop, or a turn beyond the start where there is none.
function speedsAt({ from, member }: Pull, { to, perTurn }: PullWay, beyond: 1 | -1) {
  const begin = from.get(member) as Rational;
  const turns = to ? plus(to, times(begin, fraction(-1))) : fraction(beyond);
  return new Map(
    [...from].map(([name, speed]) => {
      return [name, plus(speed, times(perTurn.get(name) ?? ZERO, turns))];
    }),
  );
}

// Undefined where the line speaks of what members do not tell, such as a pitch line.
function sumOf(line: Terms, speeds: ReadonlyMap<MemberName, Rational>): Rational | undefined {
  let sum: Rational = ZERO;
  for (const [name, coef] of line) {
    const speed = name === 'case' ? ZERO : speeds.get(name);
    if (!speed) return undefined;
    sum = plus(sum, times(speed, fraction(coef)));
  }
  return sum;
}

interface Asked {
  readonly train: Train;
  readonly on: readonly string[];
  readonly members: readonly MemberName[];
  readonly name: string;
}

function* everyScene(): Generator<Asked> {
  const dice = new Dice(seed);
  for (const file of OURS) {
    const train = ours(file);
    for (const { name, gears } of train.ranges) {
      for (const gear of gears) {
        yield {
          train,
          on: appliedIn(train, gear),
          members: handles(train),
          name: `${file}, ${name} ${gear.name}`,
        };
      }
    }
  }
  for (let k = 0; k < 40; k++) {
    const train = randomTrain(seed + k);
    const on = train.devices
      .filter(isFriction)
      .map(({ name }) => name)
      .filter(() => dice.chance(0.4));
    const members = dice.several(handles(train), 2);
    yield { train, on, members, name: `SEED=${seed + k}, [${on}] on: ${lineOf(train)}` };
  }
}

function everywhere(
  scenes: readonly Asked[],
  holds: (train: Train, on: readonly string[], member: MemberName) => void,
): void {
  for (const { train, on, members, name } of scenes) {
    for (const member of members) {
      try {
        holds(train, on, member);
      } catch (error) {
        throw new Error(`pulling ${member}; ${name}`, { cause: error });
      }
    }
  }
}

// Bodies but for the case and the planets.
function handles(train: Train): MemberName[] {
  const { bodies, onPins } = assemble(train);
  return bodies.flatMap(({ label }, body) => (body === 0 || onPins.has(body) ? [] : [label]));
}
