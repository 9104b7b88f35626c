import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { asIfTold, entryTold } from '../job/index.ts';
import {
  askUnsigned,
  askStanding,
  notesIn,
  openIn,
  sizeFor,
  unreadableTold,
  unreadWhole,
} from './index.ts';

const trainOf = (name: string) => {
  const text = fs.readFileSync(new URL(`../../../trains/${name}.train.yaml`, import.meta.url));
  return readTrain(`${text}`).train as Train;
};
const KESTREL = trainOf('kestrel-three-speed');
const DUNLIN = trainOf('dunlin-final-drive');

const told = (of: string, said: string) => entryTold(['reading', of, said], {});
const stands = (train: Train, of: string, ...said: string[]) => {
  const job = asIfTold(
    undefined,
    said.map((one) => told(of, one)),
  );
  const thing = askStanding(train, job).find(({ name }) => name === of);
  return [thing?.stands, openIn(train, job).includes(of)];
};

describe('where a thing stands that is measured', () => {
  it('is nothing yet, of all that a train measures', () => {
    const all = askStanding(KESTREL);
    expect(new Set(all.map((its) => its.stands))).toEqual(new Set(['nothing']));
    const kinds = all.map(({ kind }) => kind).join(' ');
    expect(kinds).toBe('pack pack endplay endplay band wear wear wear wear wear wear');
  });

  it.each([
    // Too large: another ring brings it inside, and only the second reading closes it.
    ['second brake', ['feeler: [1.38 mm, 1.40 mm, 1.39 mm]'], 'outside', true],
    // Inside, and the ring that is in is the best of the shelf.
    ['second brake', ['feeler: [1.03 mm, 1.02 mm, 1.03 mm]'], 'closed', false],
    // Inside at the edge, and another ring would be nearer to the middle.
    ['second brake', ['feeler: [1.20 mm, 1.20 mm, 1.20 mm]'], 'inside', false],
    // Digits that are inside in another unit.
    ['second brake', ['feeler: [0.041 mm, 0.040 mm, 0.041 mm]'], 'asked', true],
    [
      'second brake',
      [
        'feeler: [1.38 mm, 1.40 mm, 1.39 mm]',
        'again: { fitted: 1.80 mm, read: [1.19 mm, 1.18 mm] }',
      ],
      'closed',
      false,
    ],
    ['turbine shaft', ['5.0 mm, 0.50 mm, 0.51 mm'], 'asked', true],
    ['stator bushing', ['read: [0.05 mm]'], 'closed', false],
    ['stator bushing', ['read: [0.15 mm]'], 'outside', true],
  ])('%s, %s: %s', (of, said, stand, open) => {
    expect(stands(KESTREL, of, ...said)).toEqual([stand, open]);
  });

  it.each([
    ['differential bearings', 'gap: [0.08 mm, 0.08 mm]', 'asked', true],
    ['differential bearings', 'turning: [1.2 Nm, 1.3 Nm]', 'closed', false],
    ['final drive', '0.14 mm, 0.15 mm, 0.14 mm', 'closed', false],
  ])('%s, %s: %s', (of, said, stand, open) => {
    expect(stands(DUNLIN, of, said)).toEqual([stand, open]);
  });

  it('is not judged where nobody has written a limit', () => {
    const bare = { ...KESTREL, wear: [{ part: 'stator bushing', measure: 'bushing' as const }] };
    expect(stands(bare, 'stator bushing', 'read: [0.05 mm]')).toEqual(['unjudged', true]);
  });
});

describe('a pack whose plates were found burnt', () => {
  const READ = ['reading', 'second brake', 'feeler: [1.38 mm, 1.40 mm, 1.39 mm]'];
  const after = (...entries: readonly string[][]) => {
    const job = asIfTold(
      undefined,
      entries.map((words) => entryTold(words, {})),
    );
    const its = askStanding(KESTREL, job).find(({ name }) => name === 'second brake');
    const { selection, remarks } = its?.kind === 'pack' ? its.judgement : { remarks: [] };
    const spent = remarks.some(({ remark }) => remark === 'plates spent');
    return [its?.stands, selection !== undefined, spent];
  };

  it('has no part chosen before new ones are in', () => {
    expect(after(READ)).toEqual(['outside', true, false]);
    expect(after(['note', 'second pack: Linings burnt'], READ)).toEqual(['asked', false, true]);
    expect(after(['note', 'second brake: quemado'], READ)).toEqual(['asked', false, true]);
    expect(after(['note', 'low pack: Linings burnt'], READ)).toEqual(['outside', true, false]);
  });

  it('has none chosen by what was read before they were in', () => {
    const [burnt, fresh] = [
      ['note', 'second pack: Linings burnt'],
      ['installed', 'second pack', 'replaced'],
    ];
    expect(after(burnt, READ, fresh)).toEqual(['asked', false, true]);
    expect(after(READ, burnt, fresh)).toEqual(['asked', false, true]);
    expect(after(burnt, READ, fresh, READ)).toEqual(['outside', true, false]);
    // Nothing is left of what was read of the old ones by another way.
    const air = ['reading', 'second brake', 'on air: { pressure: 300 kPa, strokes: [9.9 mm] }'];
    expect(after(air, burnt, fresh, READ)).toEqual(after(burnt, fresh, READ));
  });

  it('has one chosen once they are', () => {
    const fresh = ['installed', 'second pack', 'replaced'];
    expect(after(['note', 'second pack: Linings burnt'], fresh, READ)).toEqual([
      'outside',
      true,
      false,
    ]);
  });
});

it('plates that were found burnt are not held against their drum once new ones are in', () => {
  const faulty = (...entries: readonly string[][]) => {
    const all = entries.map((words) => entryTold(words, {}));
    return askUnsigned(KESTREL, asIfTold(undefined, all)).faulty.map(({ part }) => part);
  };
  const burnt = ['note', 'direct drum: Linings burnt'];
  const fresh = ['installed', 'direct clutch', 'replaced'];
  expect(faulty(burnt)).toEqual(['direct drum']);
  expect(faulty(burnt, fresh)).toEqual([]);
  expect(faulty(fresh, burnt)).toEqual(['direct drum']);
  expect(faulty(burnt, fresh, ['note', 'direct drum: Bore scored'])).toEqual(['direct drum']);
});

describe('a part that comes in several sizes', () => {
  const setter = { name: 'thrust washer', carries: [], selective: true, sets: 'second brake' };
  const size = (...entries: readonly string[][]) => {
    const all = entries.map((words) => entryTold(words, {}));
    return sizeFor(KESTREL, asIfTold(undefined, all), setter as never);
  };
  const READ = ['reading', 'second brake', 'feeler: [1.38 mm, 1.40 mm, 1.39 mm]'];

  it('goes in with the size that was taken, else with the one that fits what was read', () => {
    expect(size()).toBeUndefined();
    expect(size(READ)).toHaveProperty('fits');
    const taken = { taken: 'backing plate 5.40 mm' };
    expect(size(READ, ['chosen', 'second brake', 'backing plate 5.40 mm'])).toEqual(taken);
  });
});

describe('what is read while the unit is whole', () => {
  const unread = (train: Train, ...entries: ReturnType<typeof told>[]) => {
    const job = asIfTold(undefined, entries);
    return unreadWhole(askStanding(train, job), notesIn(job.job)).map(({ name }) => name);
  };

  it('is every end play along a shaft, and every preload, but no backlash', () => {
    expect(unread(KESTREL)).toEqual(['turbine shaft', 'main shaft']);
    const left = (DUNLIN.endPlays ?? []).filter(({ measure }) => measure !== 'backlash');
    expect(unread(DUNLIN)).toEqual([
      ...left.map(({ shaft }) => shaft),
      ...(DUNLIN.preloads ?? []).map(({ bearings }) => bearings),
    ]);
  });

  it('is so until it is read, or somebody wrote why it could not be, in either language', () => {
    expect(unread(KESTREL, told('turbine shaft', '0.50 mm'))).toEqual(['main shaft']);
    for (const language of ['en', 'es'] as const) {
      const note = unreadableTold('main shaft', 'its end is broken', language);
      expect(unread(KESTREL, note)).toEqual(['turbine shaft']);
    }
    expect(unread(KESTREL, { kind: 'note', note: 'main shaft: bent' })).toHaveLength(2);
  });
});
