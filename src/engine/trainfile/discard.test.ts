import { describe, expect, it } from 'vitest';
import { discard, readTrain, type Thing } from './index.ts';

describe('discarding', () => {
  const TEXT = `holdturn: 1
input: crank
output: drum
sets:
  front: { sun: 30, ring: 66 }   # the one in front
  long: { shares: front, sun: 24 }
  rear: { sun: 30, ring: 66 }
joined:
  crank: [front.sun, rear.sun]
  drum: [rear.carrier]
  bell: [front.ring]
devices:
  brake: { brake: rear.ring }
  front brake: { brake: front.carrier }   # four plates
ranges:
  D: { "1": [brake, front brake], "2": [front brake] }
capacities:
  front brake: { torque Nm: 600 }
teardown:
  pack: { carries: [front brake, rear.ring] }
`;
  const discarded = (thing: Thing) => {
    const { train } = readTrain(TEXT);
    if (!train) throw new Error('not a train');
    const edited = discard(TEXT, train, thing);
    return 'text' in edited ? edited.text : edited.refused;
  };

  it('a device takes its name out of gears, parts and capacities', () => {
    expect(discarded({ thing: 'device', name: 'front brake' })).toBe(
      TEXT.replace('  front brake: { brake: front.carrier }   # four plates\n', '')
        .replace('[brake, front brake]', '[brake]')
        .replace('"2": [front brake]', '"2": []')
        .replace('capacities:\n  front brake: { torque Nm: 600 }\n', 'capacities:\n')
        .replace('[front brake, rear.ring]', '[rear.ring]'),
    );
  });

  it('a device takes its name out of what parts feed, close and set', () => {
    const text = TEXT.replace(
      '  pack: { carries: [front brake, rear.ring] }\n',
      `  lid: { feeds: [brake, front brake], closes: [front brake, brake] }
  shim: { sets: front brake, selective: yes }
packs:
  front brake: { plates: [{ kind: steel, thickness: 2 mm }] }
  brake: { plates: [{ kind: steel, thickness: 2 mm }] }
`,
    );
    const { train } = readTrain(text);
    if (!train) throw new Error('not a train');
    const edited = discard(text, train, { thing: 'device', name: 'front brake' });
    const left = 'text' in edited ? edited.text : edited.refused;
    expect(left).toContain('lid: { feeds: [brake], closes: [brake] }');
    expect(left).toContain('shim: { selective: yes }');
    expect(readTrain(left).train).toBeDefined();
  });

  it('a set takes along what acts on it alone, and leaves a text that can be read', () => {
    const text = discarded({ thing: 'set', name: 'front' });
    expect(text).toContain('crank: [rear.sun]');
    expect(text).not.toMatch(/front|long|bell/u);
    expect(readTrain(text).problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  it.each([
    ['final drive: last', ''],
    ['final drive: [last]', ''],
    ['final drive: [last, other]', 'final drive: [other]'],
  ])('a gear pair goes from %j too', (before, after) => {
    const pairs = `${before}
gear pairs:
  last: { driver: [drum, 17], driven: [wheel, 62] }
  other: { driver: [drum, 18], driven: [hub, 62] }
`;
    const text = TEXT.replace('joined:\n', `${pairs}joined:\n`);
    const { train } = readTrain(text);
    if (!train) throw new Error('not a train');
    const edited = discard(text, train, { thing: 'gear pair', name: 'last' });
    const wanted = text.replace(before, after).replace(/  last: .*\n/u, '');
    expect('text' in edited && edited.text.replace(/\n+/gu, '\n')).toBe(
      wanted.replace(/\n+/gu, '\n'),
    );
  });

  it('a gear and a join take nothing else', () => {
    expect(discarded({ thing: 'gear', within: 'D', name: '2' })).toBe(
      TEXT.replace(', "2": [front brake]', ''),
    );
    expect(discarded({ thing: 'join', name: 'bell' })).toBe(
      TEXT.replace('  bell: [front.ring]\n', ''),
    );
  });
});
