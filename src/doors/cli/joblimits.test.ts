import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { ask } from './asked.ts';

const K = path.resolve('trains/kestrel-three-speed.train.yaml');
const D = path.resolve('trains/dunlin-final-drive.train.yaml');
const folder = fs.mkdtempSync(path.join(fs.realpathSync(os.tmpdir()), 'holdturn-cli-limits-'));
const file = path.join(folder, 'unit.job.yaml');
afterAll(() => fs.rmSync(folder, { recursive: true }));
const add = async (words: string) => ask(`job add "${file}" ${words} --by TW`);
const plain = (text: string) => text.replaceAll(/\s+/gu, ' ');

// Verb, train, what, its limit, a reading, and what was mistaken. Inside its own limit in the file
// none of these readings is; by these limits each would be.
const SLIPPED = [
  ['endplay', K, 'turbine shaft', 'most: 60 mm', '0.84 mm', 'point'],
  ['endplay', K, 'turbine shaft', 'least: 0.35 in, most: 0.65 in', '12.0 mm', 'inches'],
  ['endplay', K, 'turbine shaft', 'most: 3.5 mm', '0.84 mm', 'far'],
  ['endplay', K, 'turbine shaft', 'least: 0.08 mm, most: 2.40 mm', '0.84 mm', 'far wider'],
  ['endplay', K, 'main shaft', 'most: 0.22 in', '0.050 in', 'point'],
  ['pack', K, 'forward clutch', 'least: 0.085 mm, most: 12.5 mm', 'feeler: [2.40 mm]', 'point'],
  ['pack', K, 'forward clutch', 'of: friction, least: 0.19 mm', 'friction: [1.20 mm]', 'point'],
  ['pack', K, 'forward clutch', 'of: cone, most: 0.15 in', 'cone: [0.30 mm]', 'inches'],
  ['pack', K, 'second brake', 'least: 3 mm, most: 60 mm', 'feeler: [4.00 mm]', 'far'],
  ['band', K, 'intermediate band', 'of: travel, least: 1 mm, most: 99 mm', 'turns: 9', 'far'],
  ['wear', K, 'front planets', 'most: 0.80 in', 'read: [2.0 mm]', 'inches'],
  ['wear', K, 'stator bushing', 'most: 1.0 mm', '{bore: [38.90 mm], shaft: [38.03 mm]}', 'point'],
  ['preload', D, 'differential bearings', 'least: 0.4 mm, most: 0.9 mm', 'gap: [0.08 mm]', 'point'],
] as const;

describe.each(SLIPPED)('%s of %s: %s, %s', (verb, train, of, limit, reading, why) => {
  beforeEach(() => fs.rmSync(file, { force: true }));

  it('is asked about before it is written', async () => {
    await ask(`job new "${file}" --unit u --by TW --train ${train}`);
    const before = fs.readFileSync(file, 'utf8');
    const { err, exit } = await add(`limit "${of}" "${limit}"`);
    expect(exit).toBe(2);
    expect(err).toContain(`nothing was written down: limit to be looked at: ${of} would have`);
    expect(err).toContain('sure: yes');
    expect(fs.readFileSync(file, 'utf8')).toBe(before);
  });

  it('judges nothing where no train was there to ask, and says so above the verdict', async () => {
    await ask(`job new "${file}" --unit u --by TW`);
    expect((await add(`limit "${of}" "${limit}"`)).exit).toBe(0);
    await add(`reading "${of}" "${reading}"`);
    const { out, exit } = await ask(`${verb} ${train} --job "${file}"`);
    const said = plain(out);
    expect(exit).toBe(1);
    expect(said).toContain('The job’s limit is ');
    expect(said.slice(said.indexOf('The job’s limit is '))).toContain(why);
    expect(said).not.toMatch(/: inside[.,]|Fit the|leave it in|Leave it in/u);
    const told = said.indexOf('The job’s limit is ');
    expect(told).toBeLessThan(said.indexOf('not judged') + 1 || said.length);
    const { out: data } = await ask(`${verb} ${train} --job "${file}" --json`);
    const [its] = JSON.parse(data);
    expect([its.verdict ?? null, its.selection ?? null]).toEqual([null, null]);
  });

  it('is judged by where it was told to be meant', async () => {
    await ask(`job new "${file}" --unit u --by TW --train ${train}`);
    expect((await add(`limit "${of}" "${limit}, sure: yes"`)).exit).toBe(0);
    await add(`reading "${of}" "${reading}"`);
    const { out } = await ask(`${verb} ${train} --job "${file}"`);
    expect(plain(out)).not.toContain('The job’s limit is ');
    // What it stands in the place of is told all the same.
    expect(plain(out)).toContain(`The limit of ${of} is the job’s`);
  });
});

describe('a limit of a job', () => {
  beforeEach(async () => {
    fs.rmSync(file, { force: true });
    await ask(`job new "${file}" --unit u --by TW --train ${K}`);
  });

  it.each(['most: 0.80 mm', 'least: 0.20 mm, most: 0.90 mm', 'least: 0.012 in, most: 0.028 in'])(
    'that is revised, %s, is written and judged by',
    async (limit) => {
      expect((await add(`limit "turbine shaft" "${limit}"`)).exit).toBe(0);
      await add('reading "turbine shaft" "0.70 mm"');
      const { out, exit } = await ask(`endplay ${K} --job "${file}"`);
      expect([plain(out).includes(': inside.'), exit]).toEqual([true, 0]);
    },
  );

  it.each(['most: 0 mm', 'least: 0.90 mm'])('%s is refused: its ends are reversed', async (its) => {
    const { err, exit } = await add(`limit "turbine shaft" "${its}"`);
    expect([exit, err.includes('ends reversed')]).toEqual([2, true]);
  });

  it('is measured against what was told to be meant before it', async () => {
    await add('limit "turbine shaft" "least: 3.5 mm, most: 6.5 mm, sure: yes"');
    expect((await add('limit "turbine shaft" "most: 6.0 mm"')).exit).toBe(0);
    expect((await add('limit "turbine shaft" "least: 0.35 mm, most: 0.65 mm"')).exit).toBe(2);
  });

  it('is told only where it is judged by', async () => {
    await add('limit "turbine shaft" "most: 0.80 mm"');
    await add('reading "stator bushing" "read: [0.05 mm]"');
    const { out } = await ask(`wear ${K} --job "${file}"`);
    expect(out).not.toContain('turbine shaft');
  });

  it('is sure by yes alone', async () => {
    const { exit } = await add('limit "turbine shaft" "most: 60 mm, sure: 1"');
    expect(exit).toBe(2);
  });
});

it('says to whoever signs what of the build and of the first start is not done', async () => {
  fs.rmSync(file, { force: true });
  await ask(`job new "${file}" --unit u --by TW --train ${K}`);
  const none = plain((await add('signed "strip sheet"')).out);
  expect(none).toMatch(/Never measured in this job: .*second brake/u);
  expect(none).toMatch(/Of the build nothing is written down: \d+ steps, checks and stops\./u);
  expect(none).toContain('Of the first start 10 of 10 steps are not done.');
  await add('note "torqued again" --time 2026-11-26T08:00Z');
  const { out: shown } = await ask(`job show "${file}"`);
  expect(plain(shown)).toMatch(/torqued again written after TW signed/u);
  await add('removed "rear carrier"');
  await add('note "rear carrier: Pins loose"');
  await add('built 1 "output cover"');
  await add('built 6.1 "wrong: it turns both ways"');
  await add('built "start 1"');
  const some = plain((await add('signed "build sheet"')).out);
  expect(some).toContain('Found faulty, and not replaced: rear carrier (Pins loose).');
  expect(some).toContain('Still off the unit: rear carrier.');
  expect(some).toContain('Wrong in the build, and not put right since: 6.1.');
  expect(some).toMatch(/Of the build \d+ of \d+ .* are not done, the first at step 2\./u);
  expect(some).toContain('Of the first start 9 of 10 steps are not done.');
  // Taken up as it stands, with what nobody looked at before it was covered.
  await add('built 9 "rear carrier" "found: taken over" --time 2026-11-26T09:00Z');
  await add('built "8 stop" found --time 2026-11-26T09:01Z');
  const { out: taken } = await add('signed "taken over" --json');
  const { build } = JSON.parse(taken);
  expect(build).toMatchObject({ wrong: [], unseen: [8], startsUndone: 9 });
  expect(plain((await add('signed "taken over"')).out)).toContain(
    'nobody of this job looked before: the last look at 8.',
  );
});

it('says to whoever signs what is still open, and prevents nothing', async () => {
  fs.rmSync(file, { force: true });
  await ask(`job new "${file}" --unit u --by TW --train ${D}`);
  expect((await add('signed "ready for assembly"')).out).not.toContain('still open');
  await add('reading "differential bearings" "gap: [0.08 mm]"');
  const { out, exit } = await add('signed "ready to go out"');
  expect([exit, out.includes('still open')]).toEqual([0, true]);
  expect(out).toContain('differential bearings');
  await add('reading "differential bearings" "turning: [1.4 Nm]"');
  expect((await add('signed "ready to go out"')).out).not.toContain('still open');
});
