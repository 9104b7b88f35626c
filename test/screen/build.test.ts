import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { readJob, type Told } from '../../src/shop/records/index.ts';
import { ROOT } from '../sources.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { buildAt as at, buildTo, MEANT, startBuild } from './builds.ts';
import { textSaved } from './jobs.ts';

const open = withBrowser();
const folder = mkdtempSync(path.join(tmpdir(), 'holdturn-build-'));
afterAll(() => rmSync(folder, { recursive: true }));

const TABLET = { viewport: { width: 820, height: 1180 }, hasTouch: true };

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });
const command = (...words: string[]) =>
  execFileSync(process.execPath, [path.join(ROOT, 'dist/cli.cjs'), ...words], {
    encoding: 'utf8',
    cwd: folder,
  });

async function begin(page: Page): Promise<void> {
  await startBuild(page);
  await button(page, 'Begin a job…').tap();
  await page.getByLabel('Your initials').fill('TW');
  await button(page, 'Begin a job').tap();
  await button(page, /^Job: /u).waitFor();
}

async function entries(page: Page): Promise<readonly (Told | undefined)[]> {
  await button(page, 'Job').tap();
  const { job, problems } = readJob(await textSaved(page));
  expect(problems).toEqual([]);
  return job?.entries.map(({ told }) => told) ?? [];
}

describe('a unit of ours, built on the page', () => {
  it('asks whether a part that was found faulty goes on as a new one', async () => {
    const { page } = await open('', TABLET);
    await begin(page);
    const [first = ''] = (await page.locator('.build-task h2').allTextContents()).map((title) =>
      title.replace(/^\d+\.\s*/u, ''),
    );
    await button(page, 'Job').tap();
    await page.getByLabel('A note').fill(`${first}: Cracked`);
    await page.locator('.jobs-note button').tap();
    await startBuild(page);
    await expect
      .poll(() => page.locator('.strip-faulty').textContent())
      .toContain('It was found: Cracked.');
    expect(await button(page, 'Done').count()).toBe(0);
    await button(page, 'A new one is on').tap();
    await expect.poll(() => page.locator('.build-task').getAttribute('data-task')).not.toBe('1');
    const told = await entries(page);
    expect(told.slice(-2)).toMatchObject([
      { kind: 'installed', part: first, replaced: true },
      { kind: 'built', task: '1', of: first },
    ]);
  });

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
    const all = await entries(page);
    expect(all.slice(5)).toMatchObject([
      { kind: 'built', task: '6', of: 'rear ring' },
      {
        kind: 'built',
        task: '6.1',
        went: 'wrong',
        said: expect.stringMatching(/turns both ways/u),
      },
      { kind: 'unbuilt', step: '6', why: 'rear ring: not home in the main shaft' },
      { kind: 'built', task: '6', of: 'rear ring' },
      { kind: 'built', task: '6.1', went: 'right', said: expect.stringMatching(/neither way/u) },
      { kind: 'built', task: '7' },
      { kind: 'built', task: '8' },
      { kind: 'built', task: '8 stop', said: expect.stringMatching(/rear ring: wrong way round/u) },
    ]);
    expect(complaints).toEqual([]);

    // Lines as the command writes them.
    const text = await textSaved(page);
    const its = readJob(text).job?.entries ?? [];
    command('job', 'new', 'a.job.yaml', '--unit', 'a', '--by', 'TW');
    const add = (n: number, ...words: string[]) =>
      command('job', 'add', 'a.job.yaml', ...words, '--by', 'TW', '--time', its[n]?.at ?? '');
    add(5, 'built', '6', 'rear ring');
    const [wrong, back] = [its[6]?.told, its[7]?.told];
    add(6, 'built', '6.1', `wrong: ${wrong?.kind === 'built' ? wrong.said : ''}`);
    add(7, 'unbuilt', '6', back?.kind === 'unbuilt' ? back.why : '');
    const lines = readFileSync(path.join(folder, 'a.job.yaml'), 'utf8').trim().split('\n');
    const written = lines.filter((line) => line.startsWith('- '));
    expect(written).toHaveLength(3);
    for (const line of written) expect(text.split('\n')).toContain(line);
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
    await startBuild(page);
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
