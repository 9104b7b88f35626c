import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readExperience } from '../../engine/experience/index.ts';
import { inquire } from '../../engine/cause/index.ts';
import { readSeen } from '../../engine/suspects/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { failuresOf, findingsIn } from './index.ts';

const kestrel = readTrain(fs.readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8'))
  .train as Train;
const experience = readExperience(fs.readFileSync('experience.yaml', 'utf8')).experience;
const inquiry = inquire(kestrel, experience as NonNullable<typeof experience>);
const found = (notes: readonly string[], seen = '') =>
  findingsIn(kestrel, notes, readSeen(seen, inquiry).observations);
const told = (notes: readonly string[], seen?: string) =>
  failuresOf(kestrel, found(notes, seen)).map(({ root, of, by }) =>
    [root, of, by].filter(Boolean).join(' '),
  );

describe('what was found', () => {
  // What a bench says; common practice, no source.
  it.each([
    ['second brake: burnt', 'burnt', 'second brake'],
    ['second pack: burnt', 'burnt', 'second brake'], // a part of the teardown, by what it carries
    ['second brake: forros quemados', 'burnt', 'second brake'],
    ['low sprag: marked rollers', 'broken', 'low sprag'],
    ['rear: blued, loose pins', 'blued', 'rear'],
    ['sun shell: worn bushing', 'worn bushing', 'sun shell'],
    ['pump: scored gears', 'worn pump', undefined],
    ['filtro: tapado', 'blocked filter', undefined],
    ['magnet: metal slivers', 'metal', undefined],
  ])('%s', (note, sign, of) => {
    expect(found([note])).toEqual([{ sign, said: note, ...(of && { of }) }]);
  });

  it('is read off tests too, once, and nothing is made of other notes', () => {
    const signs = found(
      ['filter: blocked', 'drove it home'],
      'filter: blocked\nrings low brake: worn\n',
    );
    expect(signs.map(({ sign, of }) => [sign, of])).toEqual([
      ['blocked filter', undefined],
      ['worn rings', 'low brake'],
    ]);
  });
});

describe('why it failed', () => {
  it('is its own circuit where one device is burnt, and what they share where several are', () => {
    expect(told(['second brake: burnt'])[0]).toBe('leaking circuit second brake');
    const three = told([
      'second brake: burnt',
      'low brake: burnt',
      'forward clutch: burnt',
      'pump: worn',
    ]);
    expect(three[0]).toBe('low pressure');
    expect(three).toContain('leaking circuit low brake');
  });

  it('is a device that drags, only where the train ties up with it in a gear of the other', () => {
    const its = told(['second brake: burnt', 'low brake: hot spots']);
    expect(its).toContain('dragging device second brake low brake'); // D 2 ties up with the low brake on
    expect(told(['direct clutch: burnt', 'second brake: hot spots'])).not.toContain(
      'dragging device direct clutch second brake', // in D 3 both are on
    );
  });

  it('is lubrication where planets are blue, and water where the fluid is milky', () => {
    expect(told(['rear: blued'])[0]).toBe('no lubrication rear');
    expect(told([], 'fluid: milky\n')[0]).toBe('water');
  });

  it('is nothing where nothing was found', () => {
    expect(told([])).toEqual([]);
  });
});
