import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Experience, readExperience } from '../experience/index.ts';
import type { Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import { accountsOf } from './observation.ts';
import { inquire, type Inquiry } from '../cause/index.ts';
import { readSeen, seenText } from './seenfile.ts';

const here = (file: string) =>
  fs.readFileSync(new URL(`../../../${file}`, import.meta.url), 'utf8');
const experience = readExperience(here('experience.yaml')).experience as Experience;
const KESTREL = here('trains/kestrel-three-speed.train.yaml');
const inquiryOf = (text: string) => inquire(readTrain(text).train as Train, experience);
const kestrel = inquiryOf(KESTREL);
// Rolling on 632 mm, a car at 60 km/h turns its wheels 504 times a minute: the output 1839 times.
const geared = inquiryOf(`${KESTREL}\ncar: { tyre mm: 632, final drive: 3.65 }\n`);

// What the lines may mean, gear by gear: the word and the ratio of each outcome.
function meant(text: string, inquiry: Inquiry): string[] {
  const { observations, problems } = readSeen(text, inquiry);
  expect(problems).toEqual([]);
  return accountsOf(inquiry, observations).flatMap(({ said, prediction: { outcomes } }) =>
    said.map(({ observation, means }) => {
      const { test } = observation;
      const its = means.map((o) => {
        const { word, ratio } = outcomes[o] ?? { word: '?' };
        return ratio ? (Number(ratio.num) / Number(ratio.den)).toFixed(2) : word;
      });
      return `${'gear' in test ? test.gear : ''}: ${its.join(' or ')}`;
    }),
  );
}

describe('engine speed at a road speed', () => {
  it('is the gear by tyre and final drive', () => {
    expect(meant('D 2: 2625 rpm at 60.0 km/h, locked', geared)).toEqual(['D 2: 1.43']);
    expect(meant('D 2: 1845 rpm at 60.0 km/h, locked', geared)).toEqual(['D 2: 1.00']);
    // A speed has no sign.
    expect(meant('R: 2145 rpm at 30.0 km/h, locked', geared)).toEqual(['R: -2.33']);
  });

  it('leaves more open where the converter slips', () => {
    // 2800 / 1839 = 1.52 through an open converter is second, and nothing else.
    expect(meant('D 2: 2800 rpm at 60.0 km/h', geared)).toEqual(['D 2: 1.43']);
    expect(meant('D 2: 2800 rpm at 60.0 km/h, locked', geared)).toEqual([
      'D 2: slips or another ratio',
    ]);
  });

  it('is the gear by its like in one that drives, in whichever order they stand', () => {
    const good = ['D 3: drives', 'D 3: 1500 rpm at 49.0 km/h, locked'];
    const bad = 'D 2: 3645 rpm at 49.0 km/h, locked';
    for (const lines of [
      [...good, bad],
      [bad, ...good],
    ]) {
      const text = lines.map((line) => `- ${line}\n`).join('');
      expect(meant(text, kestrel)).toContain('D 2: 2.43');
    }
  });

  it('tells nothing with neither, and says the way out', () => {
    const { observations, problems } = readSeen('D 2: 2625 rpm at 60 km/h', kestrel);
    expect(observations).toEqual([]);
    expect(problems).toMatchObject([{ problem: 'no scale of speeds', place: { line: 1 } }]);
    // A gear of which nobody is sure that it drives is no scale.
    const unsure = '- D 3: drives, not sure\n- D 3: 1500 rpm at 49 km/h\n';
    expect(readSeen(unsure, kestrel).problems).toMatchObject([{ problem: 'no scale of speeds' }]);
  });

  it('is written as it was read, sure or not', () => {
    const text = '- D 2: 2625 rpm at 60.5 km/h, locked, not sure\n';
    const { observations } = readSeen(text, geared);
    expect(observations[0]?.sure).toBe('not sure');
    expect(seenText(observations)).toBe(text);
  });

  it('is of a gear, and of no other test', () => {
    const { problems } = readSeen('fluid: 2625 rpm at 60 km/h', geared);
    expect(problems).toMatchObject([{ problem: 'unknown outcome' }]);
  });
});

it('what the driver says is kept as it was said', () => {
  const { says, observations, problems } = readSeen(
    'driver says: no reverse, and it smells',
    kestrel,
  );
  expect([says, observations, problems]).toEqual([['no reverse, and it smells'], [], []]);
  expect(readSeen('complaint: [a, b]', kestrel).problems).toMatchObject([{ what: 'text' }]);
});
