import fs from 'node:fs';
import { expect, it } from 'vitest';
import { readExperience } from '../src/engine/experience/index.ts';
import { inquire, type Inquiry } from '../src/engine/cause/index.ts';
import { readSeen } from '../src/engine/suspects/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';

// What had another name before is still read, and told once.

const experience = () => {
  const read = readExperience(kept('experience.yaml')).experience;
  if (!read) throw new Error('no experience');
  return read;
};

function kestrel(): Inquiry {
  const { train } = readTrain(kept('trains/kestrel-three-speed.train.yaml'));
  if (!train) throw new Error('no train');
  return inquire(train, experience());
}

it('reads "over-run" of a file of what was seen as coast', () => {
  const inquiry = kestrel();
  const now = readSeen('D 1 coast: runs free\nL 1 coast: brakes', inquiry);
  const before = readSeen('D 1 over-run: runs free\nL 1 over-run: brakes', inquiry);
  expect(now.problems).toEqual([]);
  expect(before.observations).toEqual(now.observations);
  expect(before.problems).toMatchObject([
    { problem: 'renamed', old: 'over-run', now: 'coast', severity: 'warning', place: { line: 1 } },
  ]);
});

it('reads "over-run" of a shop’s experience as coast', () => {
  const text = kept('experience.yaml');
  const before = readExperience(text.replace('\n  coast:', '\n  over-run:'));
  expect(before.experience).toEqual(readExperience(text).experience);
  expect(before.problems).toMatchObject([{ problem: 'renamed', old: 'over-run', now: 'coast' }]);
});

it('reads "flange" of a train’s packs as backing plate, and tells it once', () => {
  const text = kept('trains/kestrel-three-speed.train.yaml');
  const before = readTrain(text.replaceAll('backing plate,', 'flange,'));
  expect(before.train).toEqual(readTrain(text).train);
  expect(before.problems).toMatchObject([
    { problem: 'renamed', old: 'flange', now: 'backing plate', severity: 'warning' },
  ]);
});

it('reads the other words of the trade for plates and for what sets a pack, and tells nothing', () => {
  const text = kept('trains/kestrel-three-speed.train.yaml');
  const other = text
    .replaceAll('kind: friction', 'kind: fibre')
    .replaceAll('kind: steel', 'kind: separator plate')
    .replaceAll('backing plate', 'pressure plate')
    .replace(/^endplay:/m, 'end play:');
  expect(other).not.toBe(text);
  expect(readTrain(other)).toMatchObject({ train: readTrain(text).train, problems: [] });
});

function kept(file: string): string {
  return fs.readFileSync(new URL(`../${file}`, import.meta.url), 'utf8');
}
