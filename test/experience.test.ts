import { describe, expect, test } from 'vitest';
import { applyFault } from '../src/engine/faults/index.ts';
import { hand } from '../src/engine/hand/index.ts';
import type { Train, Way } from '../src/engine/train/index.ts';
import { trainOf } from './line.ts';

// Facts of the trade, as a learner's hands find them. Common practice, no source.

const CLOCKWISE = 'clockwise';
const ANTICLOCKWISE = 'anticlockwise';

/** How the hands find it: the ways in which a member turns while others are held. */
function turns(
  train: Train,
  turn: string,
  hold: readonly string[],
  on: readonly string[] = [],
): Way[] {
  return ([CLOCKWISE, ANTICLOCKWISE] as const).filter(
    (way) => hand(train, { hold, turn, way, on }).turns,
  );
}

describe('one race held, the other turned: it drags or locks (common practice, no source)', () => {
  /** Two races and nothing else, so that either can be held. */
  const pair = (lets: Way) =>
    trainOf(
      `in inner race; out outer race; sprag lets inner race ${lets} in outer race; vice joins inner race + outer race`,
    );

  test('the outer race held, the inner turns the way that it is let, and locks the other', () => {
    expect(turns(pair(CLOCKWISE), 'inner race', ['outer race'])).toEqual([CLOCKWISE]);
    expect(turns(pair(ANTICLOCKWISE), 'inner race', ['outer race'])).toEqual([ANTICLOCKWISE]);
  });

  test('first flip: holding the other race', () => {
    expect(turns(pair(CLOCKWISE), 'outer race', ['inner race'])).toEqual([ANTICLOCKWISE]);
  });

  test('second flip: the element fitted the other way up', () => {
    const fitted = applyFault(pair(CLOCKWISE), {
      what: 'one-way',
      device: 'sprag',
      is: 'backwards',
    });
    expect(turns(fitted, 'inner race', ['outer race'])).toEqual([ANTICLOCKWISE]);
  });

  test('third flip: looking from the other end, where clockwise is called anticlockwise', () => {
    // Whoever stands behind sees the same sprag let its inner race go the other way.
    const seen = (way: Way): Way => (way === CLOCKWISE ? ANTICLOCKWISE : CLOCKWISE);
    const fromBehind = turns(pair(CLOCKWISE), 'inner race', ['outer race']).map(seen);
    expect(fromBehind).toEqual([ANTICLOCKWISE]);
    expect(turns(pair(seen(CLOCKWISE)), 'inner race', ['outer race'])).toEqual(fromBehind);
  });

  test('two flips cancel, three are one', () => {
    const fitted = applyFault(pair(CLOCKWISE), {
      what: 'one-way',
      device: 'sprag',
      is: 'backwards',
    });
    expect(turns(fitted, 'outer race', ['inner race'])).toEqual([CLOCKWISE]);
    expect(
      turns(
        applyFault(fitted, { what: 'one-way', device: 'sprag', is: 'backwards' }),
        'outer race',
        ['inner race'],
      ),
    ).toEqual([ANTICLOCKWISE]);
  });

  test('neither race held, nothing locks; a worn one holds neither way, a seized one both', () => {
    const sound = pair(CLOCKWISE);
    expect(turns(sound, 'inner race', [])).toEqual([CLOCKWISE, ANTICLOCKWISE]);
    const worn = applyFault(sound, { what: 'one-way', device: 'sprag', is: 'slips' });
    expect(turns(worn, 'inner race', ['outer race'])).toEqual([CLOCKWISE, ANTICLOCKWISE]);
    const seized = applyFault(sound, { what: 'one-way', device: 'sprag', is: 'seized' });
    expect(turns(seized, 'inner race', ['outer race'])).toEqual([]);
  });
});

describe('hand checks that need no air, on a twin-set train (common practice, no source)', () => {
  const train = trainOf(`
    front 30:66 x3; rear 30:66 x3; in turbine shaft; out counter gear; sun shell = front.sun + rear.sun;
    main shaft = front.carrier + rear.ring + counter gear; forward clutch joins turbine shaft + front.ring;
    direct clutch joins turbine shaft + sun shell; intermediate band holds sun shell;
    second brake holds second race;
    second roller lets sun shell clockwise in second race; low brake holds rear.carrier;
    low sprag lets rear.carrier clockwise`);
  const backwards = applyFault(train, { what: 'one-way', device: 'low sprag', is: 'backwards' });
  const checks: readonly [string, string, readonly string[], readonly string[], Way][] = [
    ['the rear carrier turns clockwise only', 'rear.carrier', [], [], CLOCKWISE],
    [
      'the output held, the sun shell turns clockwise only',
      'sun shell',
      ['counter gear'],
      [],
      CLOCKWISE,
    ],
    [
      'the output held, the front ring turns anticlockwise only',
      'front.ring',
      ['counter gear'],
      [],
      ANTICLOCKWISE,
    ],
    [
      'forward clutch applied, the output held: the input locks clockwise, as first tries to drive',
      'turbine shaft',
      ['counter gear'],
      ['forward clutch'],
      ANTICLOCKWISE,
    ],
  ];
  test.each(checks)('%s', (_, turn, hold, on, way) => {
    expect(turns(train, turn, hold, on)).toEqual([way]);
  });
  test.each(checks)('the sprag backwards, it reverses: %s', (_, turn, hold, on, way) => {
    expect(turns(backwards, turn, hold, on)).toEqual([
      way === CLOCKWISE ? ANTICLOCKWISE : CLOCKWISE,
    ]);
  });

  test('a check that locks says who holds, and the torques balance', () => {
    const check = {
      hold: ['counter gear'],
      turn: 'sun shell',
      way: ANTICLOCKWISE,
      on: [],
    } as const;
    const answer = hand(train, check);
    if (answer.turns) throw new Error('it should lock');
    expect([...answer.torques.keys()]).toEqual(['sun shell', 'counter gear', 'low sprag']);
  });
});
