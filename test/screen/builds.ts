import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { askPlan } from '../../src/asking/build/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { buildTasks } from '../../src/shop/build/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { ourText } from './links.ts';

const KESTREL = readTrain(ourText('kestrel-three-speed')).train as Train;

const KESTREL_TASKS = buildTasks(askPlan(KESTREL));

/** A press of a stop that comes sooner is not meant for it; milliseconds. */
export const MEANT = 1000;

/** Goes to the room of the build, from wherever the page is. */
export async function startBuild(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Build it', exact: true }).tap();
  await page.locator('.build-task').waitFor();
}

// The task on the screen, by its key.
async function buildTask(page: Page): Promise<string | null> {
  return page.locator('.build-task').getAttribute('data-task');
}

/** Waits until a task is on the screen. */
export async function buildAt(page: Page, key: string): Promise<void> {
  await expect.poll(() => buildTask(page)).toBe(key);
}

/** Every task by the press that goes on, from the one on the screen to that of a key. */
export async function buildTo(page: Page, key: string): Promise<void> {
  const now = await buildTask(page);
  for (const its of KESTREL_TASKS.slice(KESTREL_TASKS.findIndex((one) => one.key === now))) {
    // One after the other: that is what is tried.
    // oxlint-disable-next-line eslint/no-await-in-loop
    await buildAt(page, its.key);
    if (its.key === key) return;
    // oxlint-disable-next-line eslint/no-await-in-loop
    if (its.what === 'stop') await page.waitForTimeout(MEANT);
    const press = page.locator('.build-answers button');
    const leave = press.filter({ hasText: 'left open' });
    // oxlint-disable-next-line eslint/no-await-in-loop
    await ((await leave.count()) > 0 ? leave : press.first()).tap();
  }
}
