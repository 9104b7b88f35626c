import { describe, expect, test } from 'vitest';
import { readTrain } from '../trainfile/index.ts';
import { check } from './index.ts';

const SOUND = `
holdturn: 1
name: one set
input: shaft
output: drum
sets:
  main: { sun: 30, ring: 66, planets: 3 }
joined:
  shaft: [main.sun]
  drum: [main.carrier]
devices:
  ring brake: { brake: main.ring }
  lock: { clutch: [shaft, drum] }
ranges:
  D: { "1": [ring brake], "2": [lock] }
  N: { "N": [] }
`;

// Each warning as "line: problem, of whom", line 1 being the empty one.
function warnings(text: string): string[] {
  return check(readTrain(text)).map(({ place, severity, ...finding }) => {
    expect(severity).toBe('warning');
    const { problem, ...about } = finding;
    const names = Object.values(about).filter((value) => typeof value === 'string');
    return `${place.line}: ${problem}, ${names.join(' ')}`;
  });
}

describe('check', () => {
  test('is silent about a sound train', () => {
    expect(warnings(SOUND)).toEqual([]);
  });
  test('says which way it took for forward where gears drive the output both ways', () => {
    const text = SOUND.replace('ranges:', '  back: { brake: main.carrier }\nranges:')
      .replace('output: drum', 'output: main.ring')
      .replace('drum: [main.carrier]', 'drum: [main.carrier]')
      .replace('  N:', '  R: { "R": [back] }\n  N:')
      .replace('ring brake: { brake: main.ring }', 'ring brake: { clutch: [main.ring, shaft] }');
    expect(warnings(text)).toEqual(['5: forward taken, clockwise']);
    const said = text.replace('sets:', 'forward: clockwise\nsets:');
    expect(warnings(said)).toEqual([]);
  });
  test('doubts a forward that most gears go against', () => {
    const said = (way: string) => SOUND.replace('sets:', `forward: ${way}\nsets:`);
    expect(warnings(said('clockwise'))).toEqual([]);
    expect(warnings(said('anticlockwise'))).toEqual(['6: forward against, anticlockwise']);
  });
  test('says nothing where reading found errors', () => {
    expect(warnings(SOUND.replace('output: drum', ''))).toEqual([]);
  });
  test('knows teeth that do not go together', () => {
    expect(warnings(SOUND.replace('planets: 3', 'planets: 5'))).toEqual([
      '7: planets not evenly spaced, main sun + ring',
    ]);
  });
  test('knows a race that only one device touches', () => {
    const text = SOUND.replace(
      'devices:',
      'devices:\n  stray: { one-way: [shaft, second race], lets: clockwise }',
    );
    expect(warnings(text)).toEqual(['12: member carries nothing, second race stray']);
  });
  test('takes a named shaft that only a gear touches for one that goes outside', () => {
    const text = SOUND.replace(
      'joined:',
      'gear pairs:\n  take off: { driver: [drum, 41], driven: [side shaft, 43] }\njoined:',
    );
    expect(warnings(text)).toEqual([]);
  });
  test('knows a wheel that nothing is splined to', () => {
    const text = SOUND.replace(
      'joined:',
      '  idle: { sun: 30, ring: 66, planets: 3 }\njoined:',
    ).replace('drum: [', 'drum: [idle.carrier, ');
    expect(warnings(text)).toEqual([
      '8: member carries nothing, idle.sun idle',
      '8: member carries nothing, idle.ring idle',
    ]);
  });
  test('knows a set that nothing is joined to', () => {
    const text = SOUND.replace('joined:', '  idle: { sun: 30, ring: 66, planets: 3 }\njoined:');
    expect(warnings(text)).toEqual(['8: set stands alone, idle']);
  });
  test('knows a device that can do nothing, and one that no gear applies', () => {
    const twin =
      '  twin: { sun: 30, ring: 66, planets: 3 }\njoined:\n  ring drum: [main.ring, twin.ring]';
    const text = SOUND.replace('joined:', twin)
      .replace('shaft: [main.sun]', 'shaft: [main.sun, twin.sun]')
      .replace('devices:', 'devices:\n  between: { clutch: [main.carrier, twin.carrier] }')
      .replace('"1": [ring brake]', '"1": [ring brake, between]')
      .replace('"2": [lock]', '"2": [between]');
    // Two like sets whose suns and rings are joined have carriers that always turn together.
    expect(warnings(text)).toEqual([
      '14: device does nothing, between',
      '16: device never applied, lock',
      '18: gear is neutral, D 2',
    ]);
  });
  test('knows gears that come to nothing, and a neutral that drives', () => {
    const text = SOUND.replace('"2": [lock]', '"2": [], "3": [lock, ring brake]').replace(
      '"N": []',
      '"N": [lock]',
    );
    expect(warnings(text)).toEqual([
      '15: gear is neutral, D 2',
      '15: gear ties up, D 3',
      '16: neutral drives, N N',
    ]);
  });
});
