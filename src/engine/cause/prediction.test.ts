import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { Tally } from '../../../test/tally.ts';
import { ours } from '../../../test/trains.ts';
import { type Experience, readExperience } from '../experience/index.ts';
import { inquire } from './index.ts';

const experience = readExperience(readFileSync('experience.yaml', 'utf8')).experience as Experience;

// Whatever the cause, a test shows something, and nothing more than surely.
it.each(['kestrel-three-speed', 'avocet-four-speed'])(
  'what each test of %s shows, whatever the cause, has chances that add up to 1',
  (name) => {
    const inquiry = inquire(ours(name), experience);
    const tally = new Tally({ sure: 1, open: 1 });
    for (const test of inquiry.tests) {
      for (const row of new Set(inquiry.predict(test).rows)) {
        const shown = JSON.stringify([test, row]);
        expect(Math.min(...row), shown).toBeGreaterThanOrEqual(0);
        expect(Math.max(...row), shown).toBeLessThanOrEqual(1 + 1e-12);
        expect(
          row.reduce((sum, chance) => sum + chance, 0),
          shown,
        ).toBeCloseTo(1, 9);
        tally.met(Math.max(...row) > 0.95 ? 'sure' : 'open');
      }
    }
    tally.enough();
  },
);
