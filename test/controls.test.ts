import { describe, expect, it } from 'vitest';
import { differencesOf, oilOf, withRanges } from '../src/engine/controls/index.ts';
import { applyFault, everyOilFault, faultNamed, faultText } from '../src/engine/faults/index.ts';
import { gearsOf } from '../src/engine/train/index.ts';
import { askFlow, flowsOf } from '../src/asking/gears/index.ts';
import { NoAnswer } from '../src/asking/request/index.ts';
import { check } from '../src/engine/check/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { problemText } from '../src/telling/narrative/index.ts';
import { OURS, ours, textOf } from './trains.ts';

const controlled = OURS.map((name) => [name, ours(name)] as const).filter(
  ([, { controls }]) => controls,
);

const KESTREL = 'kestrel-three-speed';
const CURLEW = 'curlew-four-speed-overdrive';

describe.each(controlled)('the oil of %s', (_, train) => {
  it('applies in each gear what its ranges say', () => {
    expect(differencesOf(train)).toEqual([]);
    for (const range of oilOf(train)) {
      for (const { call, race, settled, weak } of range) {
        const gear = `${call.range} ${call.gear}`;
        expect([gear, race, settled.chase, weak]).toEqual([gear, false, undefined, []]);
      }
    }
  });

  it('gives the ranges, where the file has none', () => {
    const bare = withRanges({ ...train, ranges: [] });
    const asked = gearsOf(bare).filter(({ range }) => train.controls?.asks?.has(range));
    const known = new Map(gearsOf(train).map(({ range, gear, on }) => [`${range} ${gear}`, on]));
    for (const { range, gear, on } of asked) {
      expect([`${range} ${gear}`, on]).toEqual([`${range} ${gear}`, known.get(`${range} ${gear}`)]);
    }
  });

  it('has faults that are read as they are told, and each makes a train', () => {
    const faults = everyOilFault(train);
    expect(faults.length).toBeGreaterThan(10);
    for (const fault of faults) {
      expect(faultNamed(faultText(fault), train)).toEqual({ fault });
      expect(applyFault(train, fault).healthy).toBe(train);
    }
  });
});

// Worked by hand from the drawing of each circuit; which gears a dead controller leaves, and the table
// of two shift solenoids, are common practice with no source.
describe('without current', () => {
  const left = (name: string) => {
    const train = ours(name);
    return oilOf(train, { dead: true }).flatMap((range) =>
      range.map(({ call, on }) => `${call.range} ${call.gear}: ${on.join(', ')}`),
    );
  };

  it('the four-speed by two solenoids is left third in D, first in L, and reverse', () => {
    const third = 'forward clutch, direct clutch, second brake';
    expect(left(CURLEW)).toEqual([
      `D 1: ${third}`,
      `D 2: ${third}`,
      `D 3: ${third}`,
      `D 4: ${third}`,
      `3 3: ${third}, overdrive clutch`,
      'L 1: forward clutch, low brake, overdrive clutch',
      'R R: direct clutch, low brake, overdrive clutch',
      'N N: ',
    ]);
  });

  it('the three-speed by governor and throttle has all its gears', () => {
    expect(left(KESTREL)).toEqual(
      gearsOf(ours(KESTREL)).map(({ range, gear, on }) => {
        const inOrder = ours(KESTREL).devices.filter(({ name }) => on.includes(name));
        return `${range} ${gear}: ${inOrder.map(({ name }) => name).join(', ')}`;
      }),
    );
  });
});

describe('a fault upstream', () => {
  const faulty = (name: string, text: string) => {
    const train = ours(name);
    const named = faultNamed(text, train);
    if (!('fault' in named)) throw new Error(`${text}: ${JSON.stringify(named)}`);
    return applyFault(train, named.fault);
  };
  const weakIn = (text: string) =>
    Object.fromEntries(
      gearsOf(faulty(CURLEW, text)).flatMap(({ range, gear, weak }) => {
        return weak ? [[`${range} ${gear}`, weak] as const] : [];
      }),
    );
  const gears = (name: string, text: string) => {
    const its = gearsOf(faulty(name, text));
    return Object.fromEntries(its.map(({ range, gear, on }) => [`${range} ${gear}`, on]));
  };

  // By hand: shift A is on in first and fourth. Without it first gets second's brake, fourth is third.
  it('of a solenoid changes the gears that ask for it, and no others', () => {
    const its = gears(CURLEW, 'shift A: no current');
    expect(its['D 1']).toEqual(['forward clutch', 'second brake']);
    expect(its['D 4']).toEqual(['forward clutch', 'direct clutch', 'second brake']);
    expect(its['D 2']).toEqual(['forward clutch', 'second brake']);
    expect(its['R R']).toEqual(['direct clutch', 'low brake', 'overdrive clutch']);
  });

  // By hand: stuck at rest the 2-3 valve feeds the direct clutch in every forward gear. In L the low
  // brake is on as well, and the 1-2 valve, which the low line moves, is held back by direct feed.
  it('of a valve is the same in whatever gear', () => {
    const its = gears(CURLEW, '2-3 shift valve: stuck in position 1');
    for (const gear of ['D 1', 'D 2', 'D 3', 'D 4', 'L 1']) {
      expect([gear, its[gear]?.includes('direct clutch')]).toEqual([gear, true]);
    }
  });

  // By hand: without the ball of the low brake, low and reverse are one line. In each of the two the
  // pump's oil goes out by the other, which the selector drains: nothing there has pressure to rely on.
  it('of a ball that was left out leaves what it fed without strength', () => {
    const weak = weakIn('low ball: left out');
    expect(Object.keys(weak)).toEqual(['L 1', 'R R']);
    expect(weak['R R']).toContain('low brake');
  });

  // By hand: in D 1 the drive line is fed and second's is not; joined, both are.
  it('of two lines that a gasket no longer parts is oil where there should be none', () => {
    expect(gears(CURLEW, 'drive: joined to second apply')['D 1']).toContain('second brake');
    expect(gears(CURLEW, 'drive: joined to second apply')['R R']).toEqual(
      gears(CURLEW, 'orifice A: blocked')['R R'],
    );
  });

  // By hand: forward clutch, direct clutch and second brake hang on the drive line in the forward
  // ranges; in R that line is drained, and its leak takes nothing from anybody.
  it('of a line that leaks weakens what hangs on it in the gears that feed it, and in no other', () => {
    const weak = weakIn('drive: leaks');
    expect(Object.keys(weak)).not.toContain('R R');
    expect(weak['D 1']).toEqual(['forward clutch']);
    expect(weak['D 3']).toEqual(['forward clutch', 'direct clutch', 'second brake']);
    const leaking = faulty(CURLEW, 'drive: leaks');
    const reverse = flowsOf(leaking).find(({ range }) => range === 'R');
    expect(reverse?.flow.drive.state).toBe('driving');
  });
});

describe('a file whose oil is not what its ranges say', () => {
  const text = textOf(CURLEW);
  const toldOf = (from: string, to: string) => {
    expect(text).toContain(from);
    const reading = readTrain(text.replace(from, to));
    const problems = [...reading.problems, ...check(reading)];
    return problems.map((its) => `${its.place.line > 1} ${problemText(its)}`);
  };

  it('is told the gear and the device', () => {
    // By hand: with one solenoid more in second the 2-3 valve is where first has it, and the 1-2 valve too.
    expect(toldOf('"2": [shift B]', '"2": [shift A, shift B]')).toEqual([
      expect.stringMatching(/^true no oil applies second brake in D 2/u),
    ]);
  });

  it.each([
    [
      'switches',
      'shift A: { bleeds: signal A, normally: open }',
      'shift A: { bleeds: signl A, normally: open }',
      /nothing gives this line oil: signl A; did you mean signal A/u,
    ],
    ['asks', '"2": [shift B]', '"2": [shift C]', /no such solenoid: shift C/u],
    ['gears', '"4": [shift A] }', '"5": [shift A] }', /no such gear in this range: 5/u],
    [
      'ranges',
      '    L: { "1": [shift A, shift B] }',
      '    M: { "1": [shift A, shift B] }',
      /no such range: M/u,
    ],
    [
      'positions',
      'low], R: [reverse], N: [] }',
      'low], N: [] }',
      /the selector has no position R/u,
    ],
    [
      'chambers',
      '    low brake:        { applies: [low apply] }\n',
      '',
      /nothing here brings oil to low brake/u,
    ],
  ])('or has a mistake in its %s: its place and the way out', (_, from, to, words) => {
    expect(toldOf(from, to).some((its) => its.startsWith('true') && words.test(its))).toBe(true);
  });
});

// Worked by hand. The signal fills, moves the valve, and the valve empties it again: for ever.
describe('oil that has no answer', () => {
  const stand = (valve: string, more = '') => `holdturn: 1
name: A stand
input: crank
output: hub
sets: { set: { sun: 30, ring: 66, planets: 3 } }
joined: { crank: [set.sun], hub: [set.carrier] }
devices: { ring brake: { brake: set.ring } }
${more}controls:
  selector: { D: [drive], N: [] }
  solenoids: { shift: { bleeds: signal, normally: open } }
  orifices: { feed: { from: drive, to: signal } }
  valves: { shift valve: { away: [signal], positions: [${valve}] } }
  oil: { ring brake: { applies: [apply] } }
  asks: { D: { "1": [] } }
`;
  const sound = '{ apply: drive }, { apply: drive, signal: exhaust }';
  const ranges = 'ranges: { D: { "1": [ring brake] }, N: { "N": [] } }\n';
  const read = (text: string) => {
    const reading = readTrain(text);
    return {
      ...reading,
      told: [...reading.problems, ...check(reading)].map((its) => problemText(its)),
    };
  };

  it('is refused, and not told as a neutral', () => {
    const { train, told } = read(stand(sound, ranges));
    expect(told).toEqual([expect.stringMatching(/no gear gives shift current/u)]);
    const chased = () => askFlow(train as never, { gear: '1', fault: ['shift: never flows'] });
    expect(chased).toThrow(
      expect.objectContaining({ why: { refused: 'bad.oil chase', gear: 'D 1' } }),
    );
    const twice = { gear: '1', fault: ['shift: never flows', 'shift: always flows'] };
    expect(() => askFlow(train as never, twice)).toThrow(NoAnswer);
  });

  it('is told where an open way leads from the pump to the exhaust', () => {
    const { told } = read(stand('{ apply: drive, drive: exhaust }, { apply: drive }', ranges));
    expect(told.join('\n')).toMatch(/an open way leads from the pump to the exhaust in D 1/u);
  });

  it('gives a file without ranges the gears that its solenoids are asked in', () => {
    const { train } = read(stand(sound));
    expect(train?.ranges).toEqual([
      { name: 'D', gears: [{ name: '1', on: ['ring brake'] }] },
      { name: 'N', gears: [{ name: 'N', on: [] }] },
    ]);
  });
});
