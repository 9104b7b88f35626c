import { spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { entryText, type Job, newJobText, readJob } from '../src/shop/records/index.ts';
import { Dice, seedOfRun, tries } from './dice.ts';
import { ROOT } from './sources.ts';

// Processes that write into one job at once, killed at 200 moments of chance: so many jobs, two
// waves of so many processes each.
const JOBS = tries(4);
const AT_ONCE = 4;
const ENTRIES = 300;

const folder = fs.mkdtempSync(path.join(fs.realpathSync(os.tmpdir()), 'holdturn-job-'));
const scribe = path.join(folder, 'scribe.cjs');
beforeAll(async () => {
  const entryPoints = [path.join(ROOT, 'test/scribe.ts')];
  await build({ entryPoints, outfile: scribe, bundle: true, platform: 'node', format: 'cjs' });
});
afterAll(() => fs.rmSync(folder, { recursive: true }));

/** A file of entries by somebody; a note is of a few letters, or of pages, which is cut sooner. */
function entriesBy(who: string, dice: Dice): string {
  const entries = Array.from({ length: ENTRIES }, (_, n) => {
    const note = `${n}${' a note'.repeat(dice.chance(0.2) ? dice.whole(600, 2400) : 1)}`;
    const { id, text } = entryText({
      at: '2026-11-25T08:00:00.000Z',
      who,
      told: { kind: 'note', note },
    });
    return { id, text };
  });
  const file = path.join(folder, `${who}.json`);
  fs.writeFileSync(file, JSON.stringify(entries));
  return file;
}

/** The ids that the process said are kept before it was killed. */
async function killed(job: string, entries: string, afterMs: number): Promise<string[]> {
  const child = spawn(process.execPath, [scribe, job, entries], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let said = '';
  child.stdout.setEncoding('utf8').on('data', (more: string) => (said += more));
  child.stdout.once('data', () => setTimeout(() => child.kill('SIGKILL'), afterMs));
  const signal = await new Promise((resolve) => {
    child.once('close', (_, by) => resolve(by));
  });
  expect(signal).toBe('SIGKILL');
  return said.split('\n').slice(0, -1);
}

async function twoWaves(
  job: string,
  waves: readonly (readonly string[])[],
  dice: Dice,
): Promise<number> {
  fs.writeFileSync(job, EMPTY);
  const acknowledged: string[] = [];
  let kills = 0;
  for (const writers of waves) {
    kills += writers.length;
    // The second wave writes after what the first left half done.
    // oxlint-disable-next-line no-await-in-loop
    const said = await Promise.all(writers.map((its) => killed(job, its, dice.whole(0, 20))));
    acknowledged.push(...said.flat());
    const read = readJob(fs.readFileSync(job, 'utf8'));
    const there = new Set((read.job as Job).entries.map(({ id }) => id));
    expect(acknowledged.filter((id) => !there.has(id))).toEqual([]);
    // What was cut is told of, and only that; a kill leaves one entry cut or unsaid at most.
    const others = read.problems.filter(({ problem }) => problem !== 'half written');
    expect(others).toEqual([]);
    expect(read.problems.length).toBeLessThanOrEqual(kills);
    expect(there.size).toBeLessThanOrEqual(acknowledged.length + kills);
  }
  return acknowledged.length;
}

const EMPTY = newJobText({
  unit: 'bench 4',
  complaint: '',
  by: 'TW',
  at: '2026-11-25T08:00:00.000Z',
});

describe('a job into which several write at once', () => {
  const seed = seedOfRun();

  it(`loses nothing that was said to be kept when they are killed (SEED=${seed})`, async () => {
    const dice = new Dice(seed);
    const waves = ['A', 'B'].map((wave) => {
      return Array.from({ length: AT_ONCE }, (_, i) => entriesBy(`${wave}${i}`, dice));
    });
    let kept = 0;
    for (let n = 0; n < JOBS; n++) {
      // oxlint-disable-next-line no-await-in-loop
      kept += await twoWaves(path.join(folder, `${n}.job.yaml`), waves, dice);
    }
    expect(kept).toBeGreaterThanOrEqual(JOBS * waves.length * AT_ONCE);
    // Only a process that cannot be killed takes so long.
  }, 600_000);
});
