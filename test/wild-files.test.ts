import fs from 'node:fs';
import { expect, test } from 'vitest';
import { readExperience } from '../src/engine/experience/index.ts';
import { inquire } from '../src/engine/cause/index.ts';
import { readSeen } from '../src/engine/suspects/index.ts';
import { seedOfRun, tries } from './dice.ts';
import { Tally } from './tally.ts';
import { ours } from './trains.ts';
import { wildText } from './wild-text.ts';

const TRIES = tries(250);
const seed = seedOfRun();

function kept(file: string): string {
  return fs.readFileSync(new URL(`../${file}`, import.meta.url), 'utf8');
}

test(`a damaged experience file has an experience or an error, never a throw (SEED=${seed})`, () => {
  const good = [kept('experience.yaml')];
  const tally = new Tally({ read: 17, told: 100 });
  for (let k = 0; k < TRIES; k++) {
    const { experience, problems } = readExperience(wildText(seed + k, good));
    expect(experience !== undefined || problems.length > 0, `SEED=${seed + k}`).toBe(true);
    tally.met(problems.length > 0 ? 'told' : 'read');
  }
  tally.enough();
});

test(`damaged observations are read or told, never a throw (SEED=${seed})`, () => {
  const { experience } = readExperience(kept('experience.yaml'));
  if (!experience) throw new Error('our own experience is not read');
  const inquiry = inquire(ours('kestrel-three-speed'), experience);
  const good = [
    'D 1: slips\nL 1: drives\nL 2 coast: brakes\nR: drives, not sure\nfluid: burnt\n',
    '- turn rear.carrier clockwise, hold front.ring: turns\n- pressure: good\n- stall D: high\n',
  ];
  const tally = new Tally({ read: 50, told: 100 });
  for (let k = 0; k < TRIES; k++) {
    const text = wildText(seed + k, good);
    const { observations, problems } = readSeen(text, inquiry);
    const told = observations.length > 0 || problems.length > 0;
    // A comment, or the mark that begins or ends a document, says nothing.
    const said = text.replace(/#.*/g, '').replace(/^(?:---|\.\.\.)\s*$/gm, '');
    expect(told || !/[^\s#]/.test(said), `SEED=${seed + k}`).toBe(true);
    if (observations.length > 0) tally.met('read');
    if (problems.length > 0) tally.met('told');
  }
  tally.enough();
});
