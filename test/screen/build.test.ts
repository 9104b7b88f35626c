import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { askPlan, buildTasks } from '../../src/asking/build/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { readJob } from '../../src/shop/records/index.ts';
import { ROOT } from '../sources.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { textSaved } from './jobs.ts';
import { ourText } from './links.ts';

const open = withBrowser();
const folder = mkdtempSync(path.join(tmpdir(), 'holdturn-build-'));
afterAll(() => rmSync(folder, { recursive: true }));

const TABLET = { viewport: { width: 820, height: 1180 }, hasTouch: true };
const KESTREL = readTrain(ourText('kestrel-three-speed')).train as Train;
const TASKS = buildTasks(askPlan(KESTREL));
/** A press of a stop that comes sooner is not meant for it; milliseconds. */
const MEANT = 1000;

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });
const task = (page: Page) => page.locator('.build-task').getAttribute('data-task');
const at = (page: Page, key: string) => expect.poll(() => task(page)).toBe(key);
const command = (...words: string[]) =>
  execFileSync(process.execPath, [path.join(ROOT, 'dist/cli.cjs'), ...words], {
    encoding: 'utf8',
    cwd: folder,
  });

async function begin(page: Page): Promise<void> {
  await button(page, 'Build it').tap();
  await page.getByLabel('Your initials').fill('TW');
  await button(page, 'Begin a job').tap();
  await button(page, /^Job: /u).waitFor();
}

// Every task by the press that goes on, from the one on the screen to that of a key.
async function buildTo(page: Page, key: string): Promise<void> {
  const now = await task(page);
  for (const its of TASKS.slice(TASKS.findIndex((one) => one.key === now))) {
    // One after the other: that is what is tried.
    // oxlint-disable-next-line eslint/no-await-in-loop
    await at(page, its.key);
    if (its.key === key) return;
    // oxlint-disable-next-line eslint/no-await-in-loop
    if (its.what === 'stop') await page.waitForTimeout(MEANT);
    const press = page.locator('.build-answers button');
    const leave = press.filter({ hasText: 'left open' });
    // oxlint-disable-next-line eslint/no-await-in-loop
    await ((await leave.count()) > 0 ? leave : press.first()).tap();
  }
}

async function notes(page: Page): Promise<readonly string[]> {
  await button(page, 'Job').tap();
  const { job, problems } = readJob(await textSaved(page));
  expect(problems).toEqual([]);
  return job?.entries.flatMap(({ told }) => (told?.kind === 'note' ? [told.note] : [])) ?? [];
}

describe('a unit of ours, built on the page', () => {
  it('by touch: a wrong feel leads back, a reload goes on, and the job has what was done', async () => {
    const { page, complaints } = await open('', TABLET);
    await begin(page);
    await buildTo(page, '6.1');
    await expect
      .poll(() => page.locator('.build-ask').textContent())
      .toContain('Hold the main shaft');
    await page.locator('.build-half .build-hand.build-held').waitFor({ state: 'attached' });
    expect(await accessFaults(page)).toEqual([]);
    await button(page, 'Wrong').tap();
    await button(page, 'It turns both ways').tap();
    await expect
      .poll(() => page.locator('.build-back').textContent())
      .toContain('rear ring: not home in the main shaft');
    await page.locator('.build-back button').tap();
    await at(page, '6');

    // The browser is closed, and opened again.
    await page.reload();
    await at(page, '6');
    await buildTo(page, '9');
    const all = await notes(page);
    const kestrel = [
      /^build 6: .*rear ring/u,
      /^build 6\.1 wrong: .*turns both ways/u,
      /^build back to 6: rear ring: not home in the main shaft$/u,
      /^build 6: .*rear ring/u,
      /^build 6\.1 right: .*turns neither way/u,
      /^build 7: /u,
      /^build 8: /u,
      /^build 8 stop: .*rear ring: wrong way round/u,
    ];
    expect(all).toHaveLength(5 + kestrel.length);
    for (const [i, pattern] of kestrel.entries()) expect(all[5 + i]).toMatch(pattern);
    expect(complaints).toEqual([]);

    // A line as the command writes it.
    const text = await textSaved(page);
    const first = readJob(text).job?.entries[0];
    command('job', 'new', 'a.job.yaml', '--unit', 'a', '--by', 'TW');
    const clock = ['--by', 'TW', '--time', first?.at ?? ''];
    command('job', 'add', 'a.job.yaml', 'note', all[0] ?? '', ...clock);
    const line = readFileSync(path.join(folder, 'a.job.yaml'), 'utf8').trim().split('\n').at(-1);
    expect(text.split('\n')).toContain(line);
  });

  it('is not passed at a stop by a key that is held down, nor by a second press', async () => {
    const { page } = await open('', TABLET);
    await begin(page);
    await buildTo(page, '8');
    // Down on the step before, and never up.
    await button(page, 'Done').focus();
    await page.keyboard.down('Enter');
    await at(page, '8 stop');
    for (let i = 0; i < 5; i++) await page.keyboard.down('Enter');
    await page.waitForTimeout(MEANT);
    // The press itself has the focus, and the key is still down.
    const pass = button(page, 'I have looked at each: cover them');
    await pass.focus();
    for (let i = 0; i < 5; i++) await page.keyboard.down('Enter');
    await page.waitForTimeout(200);
    await at(page, '8 stop');
    expect(await accessFaults(page)).toEqual([]);
    await page.keyboard.up('Enter');
    await page.keyboard.press('Enter');
    await at(page, '9');
    // What is found at the stop leads back, too.
    await button(page, '‹ Before').tap();
    await at(page, '8 stop');
    await button(page, 'Take everything off again from step 8 on').tap();
    await at(page, '8');
    await button(page, 'Done').tap();
    await at(page, '8 stop');
    // A second tap of the one that was meant for the step.
    await pass.tap();
    await at(page, '8 stop');
    await button(page, 'One of them is wrong').tap();
    await page.locator('.build-back button', { hasText: 'rear ring: wrong way round' }).tap();
    await at(page, '6');
  });

  it('goes to measure and comes back; then comes the first start; in Spanish too', async () => {
    const { page } = await open('', TABLET);
    await button(page, 'Build it').tap();
    await buildTo(page, '18');
    await button(page, 'Measure it').tap();
    await page.locator('.measure h2', { hasText: 'second brake' }).waitFor();
    await button(page, '‹ Back to the build').tap();
    await at(page, '18');
    await buildTo(page, 'start 5');
    const start = page.locator('.build-task');
    expect(await start.textContent()).toMatch(/First start, 5 of 10.*maker has the last word/su);
    expect(await start.locator('.build-caution').textContent()).toContain('hoist');
    await page.getByText('View').first().tap();
    await page.getByLabel('Language').selectOption('es');
    await expect.poll(() => start.textContent()).toContain('Primer arranque');
    expect(await start.textContent()).not.toMatch(/\b(?:first|maker|done|before)\b/iu);
    const heights = await page.locator('.build-task button').evaluateAll((all) => {
      return all.map((one) => one.getBoundingClientRect().height);
    });
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(72);
    expect(await accessFaults(page)).toEqual([]);
  });
});
