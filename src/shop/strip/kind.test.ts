import { expect, it } from 'vitest';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { faultFrom, findingsOf } from './findings.ts';
import { kindOfPart } from './kind.ts';

const { train } = readTrain(`
holdturn: 1
input: shaft
output: hub
sets: { set: { sun: 30, ring: 66 } }
joined: { shaft: [set.sun], hub: [set.carrier] }
devices:
  low sprag: { one-way: [race, case], lets: clockwise }
  low brake: { brake: race }
  top clutch: { clutch: [shaft, hub] }
  low band: { band: set.ring }
`);
const NAMED = train as Train;
const kind = (name: string, carries: string[] = [], notes = {}) =>
  kindOfPart(NAMED, { name, carries, ...notes });

// Heads of names, as the trade forms them; common practice, no source.
it.each([
  ['pump gasket', 'gasket'],
  ['carrier snap ring', 'snap ring'],
  ['sun washer', 'washer'],
  ['low and high drum', 'drum'],
  ['ring flange', 'hub'],
  ['rear ring gear', 'ring'],
  ['needle cage', 'bearing'],
  ['junta de la bomba', 'gasket'],
  ['arandela del planetario', 'washer'],
  ['anillo elástico de la corona', 'snap ring'],
  ['cuerpo de válvulas', 'valve body'],
] as const)('%s is a %s by its name', (name, is) => {
  expect(kind(name)).toBe(is);
});

it('a name that says nothing leaves it to what is carried, and to the notes', () => {
  expect(kind('K', ['set.ring'])).toBe('ring');
  expect(kind('K', ['set.sun'])).toBe('sun');
  expect(kind('K', ['shaft'])).toBe('shaft'); // the input
  expect(kind('K', ['low brake'])).toBe('pack');
  expect(kind('K', ['low band'])).toBe('band');
  expect(kind('K', ['hub', 'top clutch'])).toBe('drum');
  expect(kind('K', ['low sprag.outer'])).toBe('race');
  expect(kind('K', [], { selective: true })).toBe('washer');
  expect(kind('K')).toBeUndefined();
});

it('a cage is a carrier to some: what it carries says more, and the file most', () => {
  expect(kind('cage', ['low sprag'])).toBe('one-way clutch');
  expect(kind('pump', [], { kind: 'cover' })).toBe('cover');
});

it('a drum that comes out with its plates is looked over as a pack too', () => {
  const found = (carries: string[], notes = {}) =>
    findingsOf(NAMED, { name: 'front drum', carries, ...notes });
  expect(found(['shaft'])).not.toContain('burnt');
  for (const its of [found(['shaft'], { frictions: 3 }), found(['shaft', 'top clutch'])]) {
    // Its piston is in it; common practice, no source.
    expect(its).toEqual(
      expect.arrayContaining(['worn bushing', 'burnt', 'hot spots', 'cut seals']),
    );
    expect(new Set(its).size).toBe(its.length);
  }
  // No band runs on it; on the other one does.
  expect(found(['shaft'])).not.toContain('glazed');
  expect(found(['set.ring'])).toContain('glazed');
});

it('what was fitted wrongly leads to the fault that it makes, of the device it carries', () => {
  const cage = { name: 'cage', carries: ['low sprag'] };
  expect(findingsOf(NAMED, cage)).toContain('backwards');
  expect(faultFrom(NAMED, cage, 'backwards')).toEqual({
    what: 'one-way',
    device: 'low sprag',
    is: 'backwards',
  });
  const pack = { name: 'low pack', carries: ['low brake'] };
  expect(findingsOf(NAMED, pack)).toContain('wrong order');
  expect(faultFrom(NAMED, pack, 'wrong order')).toMatchObject({ is: 'slips' });
  expect(faultFrom(NAMED, pack, 'warped')).toBeUndefined();
  // Every fault that a finding leads to is one of such a device.
  const band = { name: 'strap', carries: ['low band'] };
  expect(faultFrom(NAMED, band, 'strut out')).toMatchObject({ is: 'will not apply' });
});
