import { describe, expect, it } from 'vitest';
import { voiceOf } from '../voice/index.ts';
import { applyFault } from '../../engine/faults/index.ts';
import { hand } from '../../engine/hand/index.ts';
import type { OneWayClutch, Way } from '../../engine/train/index.ts';
import { trainOf } from '../../../test/line.ts';
import { opposite, type Stand } from '../../asking/request/index.ts';
import { freeWay, oneWayWords } from './oneway.ts';
import { sentences } from './reasons.ts';

// Two races and nothing else, so that either can be held.
const train = trainOf(
  'in inner race; out outer race; sprag lets inner race clockwise in outer race',
);
const sprag = train.devices[0] as OneWayClutch;

const STANDS: readonly Required<Omit<Stand, 'ends'>>[] = (['input', 'output'] as const).flatMap(
  (seenFrom) =>
    (['outer', 'inner'] as const).flatMap((hold) =>
      (['as described', 'other way up'] as const).map((fitted) => ({ seenFrom, hold, fitted })),
    ),
);

const flips = ({ seenFrom, hold, fitted }: Stand) =>
  [seenFrom === 'output', hold === 'inner', fitted === 'other way up'].filter(Boolean).length;

// What the hands find: the clutch turned over is fitted backwards; whoever looks from the other
// end calls each way by the other word.
function found({ seenFrom, hold, fitted }: Stand): Way[] {
  const fault = { what: 'one-way', device: 'sprag', is: 'backwards' } as const;
  const asFitted = fitted === 'other way up' ? applyFault(train, fault) : train;
  const [still, turn] =
    hold === 'outer' ? ['outer race', 'inner race'] : ['inner race', 'outer race'];
  const ways = (['clockwise', 'anticlockwise'] as const).filter(
    (way) => hand(asFitted, { hold: [still], turn, way, on: [] }).turns,
  );
  return seenFrom === 'output' ? ways.map(opposite) : ways;
}

describe('the three flips of a one-way clutch (common practice, no source)', () => {
  it.each(STANDS)('words are what the hands find: $seenFrom, $hold, $fitted', (stand) => {
    expect(found(stand)).toEqual([freeWay(sprag, stand)]);
  });

  it.each(STANDS)('two flips cancel: $seenFrom, $hold, $fitted', (stand) => {
    const expected = flips(stand) % 2 === 0 ? 'clockwise' : 'anticlockwise';
    expect(freeWay(sprag, stand)).toBe(expected);
  });

  it.each(STANDS)('every statement has its four things: $seenFrom, $hold, $fitted', (stand) => {
    const words = oneWayWords(sprag, stand);
    const free = freeWay(sprag, stand);
    expect(words).toBe(
      `Hold the ${stand.hold} race of the sprag (the ${stand.hold} race) and turn the ` +
        `${stand.hold === 'outer' ? 'inner' : 'outer'} (the ` +
        `${stand.hold === 'outer' ? 'inner' : 'outer'} race): seen from the ${stand.seenFrom} ` +
        `end, fitted ${stand.fitted === 'other way up' ? 'the other way up' : 'as described'}, ` +
        `it turns ${free} freely and locks ${opposite(free)}.`,
    );
    const spanish = oneWayWords(sprag, stand, voiceOf('es'));
    expect(spanish).toContain(stand.seenFrom === 'input' ? 'lado de entrada' : 'lado de salida');
    expect(spanish).toContain(stand.fitted === 'as described' ? 'como se describe' : 'del revés');
    expect(spanish).toContain(
      free === 'clockwise' ? 'libre en sentido horario' : 'libre en sentido antihorario',
    );
  });

  it('a clutch that slips or has seized has no way to tell', () => {
    expect(oneWayWords({ ...sprag, stuck: 'open' })).toContain('turns freely both ways');
    expect(oneWayWords({ ...sprag, stuck: 'locked' })).toContain('locks both ways');
  });
});

describe('sentences are made for where the reader stands', () => {
  const check = { hold: ['outer race'], turn: 'inner race', way: 'anticlockwise', on: [] } as const;
  const { facts } = hand(train, check);
  const from = (seenFrom: Stand['seenFrom']) =>
    sentences(facts, voiceOf('en'), { seenFrom, hold: 'outer' }).join(' ');

  it('every way is called by its other word from the other end, and the end is named', () => {
    const swapped = from('input')
      .replaceAll('anticlockwise', 'ANTI')
      .replaceAll('clockwise', 'anticlockwise')
      .replaceAll('ANTI', 'clockwise')
      .replaceAll('the input end', 'the output end');
    expect(from('output')).toBe(swapped);
    expect(from('input')).toContain('locks anticlockwise, seen from the input end');
  });
});
