import { describe, expect, it } from 'vitest';
import { readTrain } from '../trainfile/index.ts';
import type { Train } from '../train/index.ts';
import { drive } from './index.ts';

// Invented. By hand: the ring clutch carries 1.348 times what comes in, and the direct clutch brings
// 0.348 of it back.
const { train } = readTrain(`holdturn: 1
name: Round
input: shaft
output: flange
sets:
  near: { sun: 37, ring: 83, planets: 3, planet: 23 }
  far: { sun: 44, ring: 76, planets: 3, planet: 16 }
joined:
  flange: [near.carrier, far.carrier]
  bell: [near.ring, far.sun]
devices:
  direct clutch: { clutch: [shaft, near.sun] }
  ring clutch: { clutch: [shaft, far.ring] }
  reverse brake: { brake: far.ring }
ranges:
  D: { "3": [ring clutch, direct clutch] }
`);

describe('torque that goes round in what turns as one', () => {
  it('is told, with whom it goes through', () => {
    expect(drive(train as Train, ['ring clutch', 'direct clutch']).facts).toContainEqual({
      fact: 'goes round',
      sets: ['near', 'far'],
      devices: ['direct clutch', 'ring clutch'],
    });
  });

  it('is not told of power that goes round', () => {
    const { facts } = drive(train as Train, ['direct clutch', 'reverse brake']);
    expect(facts.map(({ fact }) => fact)).toContain('recirculates');
    expect(facts.map(({ fact }) => fact)).not.toContain('goes round');
  });
});
