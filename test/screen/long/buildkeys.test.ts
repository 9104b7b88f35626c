import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { readJob } from '../../../src/shop/records/index.ts';
import { accessFaults } from '../access.ts';
import { CHROMIUM, withServer } from '../browser.ts';
import { buildAt, MEANT } from '../builds.ts';
import { textSaved } from '../jobs.ts';

const address = withServer();
const profile = mkdtempSync(path.join(tmpdir(), 'holdturn-keys-'));
let alive: BrowserContext | undefined;
afterAll(async () => {
  await alive?.close();
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
});

// A browser with the same profile each time: closed and opened, it is another one.
async function started(): Promise<Page> {
  alive = await chromium.launchPersistentContext(profile, {
    executablePath: CHROMIUM,
    args: ['--no-sandbox', '--disable-dev-shm-usage'],
    viewport: { width: 1280, height: 800 },
    serviceWorkers: 'block',
  });
  alive.setDefaultTimeout(60_000);
  const page = await alive.newPage();
  await page.addInitScript("localStorage.setItem('holdturn begun', 'yes')");
  await page.goto(address());
  await page.waitForSelector('.why li');
  return page;
}

// Tab, until what has the focus is called so; nothing is pointed at.
async function tabTo(page: Page, name: RegExp): Promise<void> {
  // More than once round: what is made meanwhile is met the next time.
  for (let i = 0; i < 600; i++) {
    // oxlint-disable-next-line eslint/no-await-in-loop
    await page.keyboard.press('Tab');
    // oxlint-disable-next-line eslint/no-await-in-loop
    const called = await page.evaluate(() => {
      const its = document.activeElement;
      const labels = its instanceof HTMLInputElement ? [...(its.labels ?? [])] : [];
      return its?.ariaLabel ?? labels[0]?.textContent ?? its?.textContent ?? '';
    });
    if (name.test(called.trim())) return;
  }
  throw new Error(`nothing that Tab reaches is called ${name}`);
}

async function press(page: Page, name: RegExp): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('Enter');
}

it('by keys alone a half-built unit is taken up, its stops first, in a browser that was closed', async () => {
  let page = await started();
  await press(page, /^Build it$/u);
  await press(page, /^Begin a job…$/u);
  await tabTo(page, /^Your initials/u);
  await page.keyboard.type('TW');
  await press(page, /^Begin a job$/u);
  await press(page, /^All steps, in order$/u);
  await press(page, /^32\. pump gasket/u);
  await buildAt(page, '32');
  await press(page, /^It stands here already: this is done$/u);
  expect(await accessFaults(page)).toEqual([]);
  await press(page, /^I take it over from somebody else$/u);
  // Whatever was covered is asked first, each by a press of its own.
  await buildAt(page, '8 stop');
  await expect
    .poll(() => page.locator('.build-ask').textContent())
    .toContain('covered already: now they are put right by stripping alone');
  await page.waitForTimeout(MEANT);
  await press(page, /^Nobody knows: it stays open$/u);
  // It goes on once that is kept.
  await buildAt(page, '13 stop');

  await alive?.close();
  page = await started();
  await press(page, /^Build it$/u);
  for (const stop of ['13', '16', '21', '26', '30']) {
    // oxlint-disable-next-line eslint/no-await-in-loop
    await buildAt(page, `${stop} stop`);
    // oxlint-disable-next-line eslint/no-await-in-loop
    await page.waitForTimeout(MEANT);
    // oxlint-disable-next-line eslint/no-await-in-loop
    await press(page, /^Each was looked at, and right$/u);
  }
  await buildAt(page, '33');
  const done = page.getByText('The unit is built, and has run.').first();
  for (let i = 0; i < 60 && !(await done.isVisible()); i++) {
    // oxlint-disable-next-line eslint/no-await-in-loop
    const before = await page.locator('.build-task').getAttribute('data-task');
    // oxlint-disable-next-line eslint/no-await-in-loop
    if (before?.endsWith('stop')) await page.waitForTimeout(MEANT);
    // oxlint-disable-next-line eslint/no-await-in-loop
    await press(page, /^(?:Done|Go on, left open|Right|thud|I have looked at each)/u);
    // oxlint-disable-next-line eslint/no-await-in-loop
    await expect.poll(() => page.locator('.build-task').getAttribute('data-task')).not.toBe(before);
  }
  await press(page, /^To the job, to sign$/u);
  await expect
    .poll(() => page.locator('.jobs-sign').textContent())
    .toContain('nobody of this job looked before: the last look at 8.');
  expect(await page.locator('.jobs-sign').textContent()).not.toMatch(/Of the build|first start/u);
  const { job } = readJob(await textSaved(page));
  const told = job?.entries.map((its) => its.told);
  expect(told?.slice(0, 2)).toMatchObject([
    { kind: 'built', task: '32', of: 'pump gasket', went: 'found' },
    { kind: 'built', task: '8 stop', went: 'found' },
  ]);
  expect(told?.at(-1)).toMatchObject({ kind: 'built', task: 'start 10' });
}, 120_000);
