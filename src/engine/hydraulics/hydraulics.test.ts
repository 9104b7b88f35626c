import { describe, expect, it } from 'vitest';
import { fraction, ONE, toNumber, ZERO } from '../linear/index.ts';
import { type Call, type Circuit, oilInRange, servoNow, Settling, withOilFault } from './index.ts';

const BARE: Circuit = {
  selector: [
    { name: 'D', feeds: ['drive'] },
    { name: 'R', feeds: ['reverse'] },
  ],
  solenoids: [],
  valves: [],
  passages: [],
  servos: [],
  sources: [{ line: 'pump', pressure: fraction(500) }],
};
const told = (circuit: Circuit, on: readonly string[] = [], position = 'D') => {
  const current = new Map(on.map((name) => [name, 'on' as const]));
  const settling = new Settling(circuit, { position, current, pressures: new Map() });
  return settling.settle(settling.start);
};
const state = (line: string, circuit: Circuit, ...on: string[]) => {
  const now = told(circuit, on).rest?.lines.get(line);
  return now && `${now.state} ${toNumber(now.most)}`;
};

// Common practice, no source: what each kind of line does on a bench.
describe('a line', () => {
  it('is fed by the selector in one position and drained by it in the others', () => {
    expect(state('drive', BARE)).toBe('fed 500');
    expect(state('reverse', BARE)).toBe('drained 0');
  });

  it('behind an orifice is emptied by a solenoid that bleeds it, and full without', () => {
    const bled: Circuit = {
      ...BARE,
      passages: [{ from: 'drive', to: 'signal', size: 'orifice' }],
      solenoids: [{ name: 'A', line: 'signal', does: 'bleeds', normally: 'open' }],
    };
    // Without current a normally open one lets the oil go: off is no pressure, here.
    expect(state('signal', bled)).toBe('drained 0');
    expect(state('signal', bled, 'A')).toBe('fed 500');
    // The drive line itself is not short: an orifice stands between.
    expect(state('drive', bled)).toBe('fed 500');
  });

  it('has oil without current from a normally open solenoid that feeds it', () => {
    const fed: Circuit = {
      ...BARE,
      solenoids: [{ name: 'A', line: 'signal', from: 'drive', does: 'feeds', normally: 'open' }],
    };
    expect(state('signal', fed)).toBe('fed 500');
    expect(state('signal', fed, 'A')).toBe('shut in 0');
  });

  it('has no more than a pressure-controlling solenoid gives, high or low without current', () => {
    const modulated = (normally: 'high' | 'low'): Circuit => ({
      ...BARE,
      solenoids: [{ name: 'A', line: 'apply', from: 'drive', does: 'switches', normally }],
    });
    expect(state('apply', modulated('high'))).toBe('fed 500');
    expect(state('apply', modulated('high'), 'A')).toBe('drained 0');
    expect(state('apply', modulated('low'))).toBe('drained 0');
    const current = new Map([['A', fraction(180)]]);
    const settling = new Settling(modulated('low'), {
      position: 'D',
      current,
      pressures: new Map(),
    });
    expect(toNumber(settling.at([]).lines.get('apply')?.most ?? ZERO)).toBe(180);
  });

  it('is short, and all that hangs on it with it, where it is open to pump and exhaust at once', () => {
    const open: Circuit = {
      ...BARE,
      passages: [
        { from: 'drive', to: 'exhaust', size: 'open' },
        { from: 'drive', to: 'beyond', size: 'open', oneWay: true },
      ],
    };
    expect(state('pump', open)).toBe('short 500');
    expect(state('beyond', open)).toBe('low 500');
  });

  it('leaks: it and what is fed through it is low, what lies before it is not', () => {
    const leaking: Circuit = {
      ...BARE,
      passages: [
        { from: 'drive', to: 'apply', size: 'open', oneWay: true },
        { from: 'drive', to: 'exhaust', size: 'leak' },
      ],
    };
    expect(state('drive', leaking)).toBe('low 500');
    expect(state('apply', leaking)).toBe('low 500');
    expect(state('pump', leaking)).toBe('fed 500');
  });
});

describe('a valve', () => {
  const shift = { name: 'shift', springs: [ZERO], pushes: [] };
  it('goes on against its spring where oil beats it, and not where it is even', () => {
    const at = (kPa: number) => {
      const circuit: Circuit = {
        ...BARE,
        sources: [...BARE.sources, { line: 'governor', pressure: fraction(kPa) }],
        valves: [
          {
            ...shift,
            springs: [fraction(120)],
            positions: [[['apply', 'exhaust']], [['drive', 'apply']]],
            pushes: [{ line: 'governor', to: 'away', area: ONE }],
          },
        ],
      };
      return state('apply', circuit);
    };
    expect(at(120)).toBe('drained 0');
    expect(at(121)).toBe('fed 500');
  });

  it('that empties the line which pushes it chases itself for ever', () => {
    const buzzing: Circuit = {
      ...BARE,
      passages: [{ from: 'drive', to: 'signal', size: 'orifice' }],
      valves: [
        {
          ...shift,
          positions: [[], [['signal', 'exhaust']]],
          pushes: [{ line: 'signal', to: 'away', area: ONE }],
        },
      ],
    };
    expect(told(buzzing).chase?.map(({ to }) => to)).toEqual([1, 0]);
  });

  it('that feeds its own end once it has moved is a latch: the way there decides', () => {
    const latch: Circuit = {
      ...BARE,
      solenoids: [{ name: 'A', line: 'set', from: 'drive', does: 'switches', normally: 'low' }],
      valves: [
        {
          ...shift,
          positions: [[['hold', 'exhaust']], [['drive', 'hold']]],
          pushes: [
            { line: 'set', to: 'away', area: ONE },
            { line: 'hold', to: 'away', area: ONE },
          ],
        },
      ],
      servos: [{ device: 'second brake', chambers: [{ side: 'applies', line: 'hold' }] }],
    };
    const [one, two] = oilInRange(latch, [call('1'), call('2', 'A')]);
    expect(one?.servos.map(({ is }) => is)).toEqual(['released']);
    expect(two?.servos.map(({ is }) => is)).toEqual(['applied']);
    expect(one?.latches.map(({ from, servos }) => [from, servos[0]?.is])).toEqual([
      ['the gear above', 'applied'],
    ]);
  });

  it('that cuts the feed of another one which cuts its own makes a race', () => {
    const cuts = (name: string, own: string, other: string) => ({
      name,
      springs: [ZERO],
      positions: [[['drive', other] as const], [[other, 'exhaust'] as const]],
      pushes: [{ line: own, to: 'away' as const, area: ONE }],
    });
    const race: Circuit = {
      ...BARE,
      valves: [cuts('first', 'a', 'b'), cuts('second', 'b', 'a')],
    };
    expect(oilInRange(race, [call('1')])[0]?.race).toBe(true);
  });
});

function call(gear: string, ...on: string[]): Call {
  const current = new Map(on.map((name) => [name, 'on' as const]));
  return { range: 'D', gear, command: { position: 'D', current, pressures: new Map() } };
}

// Common practice, no source.
describe('a fault', () => {
  const none = { position: 'D', pressures: new Map() };

  it('of a solenoid that never moves gives nothing of what is asked of it', () => {
    const circuit: Circuit = {
      ...BARE,
      solenoids: [{ name: 'A', line: 'apply', from: 'drive', does: 'switches', normally: 'high' }],
    };
    const calls = [
      { ...call('1'), command: { ...none, current: new Map([['A', fraction(300)]]) } },
    ];
    const apply = (is?: 'never flows' | 'always flows') => {
      const fault = is && ({ part: 'solenoid', name: 'A', is } as const);
      const asked = fault ? withOilFault({ circuit, calls }, fault) : { circuit, calls };
      const [oil] = oilInRange(asked.circuit, asked.calls);
      return toNumber(oil?.settled.rest?.lines.get('apply')?.most ?? ZERO);
    };
    expect([apply(), apply('never flows'), apply('always flows')]).toEqual([300, 0, 500]);
  });

  it('of a line that is blocked lets it push no valve', () => {
    const circuit: Circuit = {
      ...BARE,
      valves: [
        {
          name: 'shift',
          springs: [ZERO],
          positions: [[['hold', 'exhaust']], [['drive', 'hold']]],
          pushes: [{ line: 'drive', to: 'away', area: ONE }],
        },
      ],
    };
    const calls = [call('1')];
    const blocked = withOilFault(
      { circuit, calls },
      { part: 'line', name: 'drive', is: 'blocked' },
    );
    expect(oilInRange(circuit, calls)[0]?.settled.rest?.stand).toEqual([1]);
    expect(oilInRange(blocked.circuit, calls)[0]?.settled.rest?.stand).toEqual([0]);
  });
});

// F = p·A (ISO 4391's pressure on an area; any textbook): 500 kPa on 2,000 mm² is 1,000 N.
describe('a servo', () => {
  const lines = (apply: number, release: number) =>
    new Map(
      Object.entries({ apply, release }).map(([line, kPa]) => {
        const pressure = fraction(kPa);
        return [line, { state: 'fed' as const, least: pressure, most: pressure }];
      }),
    );
  const band = (apply: number, release: number) => ({
    device: 'band',
    chambers: [
      { side: 'applies' as const, line: 'apply', area: fraction(apply) },
      { side: 'releases' as const, line: 'release', area: fraction(release) },
    ],
  });

  it('pushes with pressure times area', () => {
    const { is, push } = servoNow(band(2000, 2500), lines(500, 0));
    expect([is, toNumber(push) / 1000]).toEqual(['applied', 1000]);
  });

  it('is held off by its larger release side, and not by a smaller one', () => {
    expect(servoNow(band(2000, 2500), lines(500, 500)).is).toBe('held off');
    const { is, push } = servoNow(band(2500, 2000), lines(500, 500));
    expect([is, toNumber(push) / 1000]).toEqual(['applied', 250]);
  });

  it('without areas is held off, or as it is said', () => {
    const bare = {
      device: 'band',
      chambers: band(1, 1).chambers.map(({ side, line }) => ({ side, line })),
    };
    expect(servoNow(bare, lines(500, 500)).is).toBe('held off');
    expect(servoNow({ ...bare, wins: 'applies' }, lines(500, 500)).is).toBe('applied');
  });
});
