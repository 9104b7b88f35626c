import { readFileSync } from 'node:fs';
import type { Download, Page } from 'playwright-core';
import { expect } from 'vitest';

export const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });

/** What stands in the open job, in the order of time. */
export const said = (page: Page) => page.locator('.jobs-said').allTextContents();

/** What the room tells of where jobs are kept, and of files. */
export const noticed = (page: Page) =>
  expect.poll(() => page.locator('.jobs-notices').textContent());

/** Begins an invented job of invented people. */
export async function begin(page: Page, unit = 'unit 7, green tag'): Promise<void> {
  await button(page, 'Job').click();
  await page.getByLabel('Your initials').fill('TW');
  await page.getByLabel('The unit, and how it is marked').fill(unit);
  await button(page, 'Begin a job').click();
  await page.getByRole('region', { name: 'The open job' }).waitFor();
}

/** What is read before anything comes off could not be: said deliberately, and one by one. */
export async function cannotRead(page: Page): Promise<void> {
  const asks = button(page, 'It could not be read, because…');
  await asks.first().waitFor();
  for (let left = (await asks.count()) - 1; left >= 0; left--) {
    // oxlint-disable-next-line no-await-in-loop
    await asks.first().click();
    // oxlint-disable-next-line no-await-in-loop
    await button(page, 'it came in apart').click();
    // oxlint-disable-next-line no-await-in-loop
    await expect.poll(() => asks.count()).toBe(left);
  }
}

export async function note(page: Page, text: string): Promise<void> {
  await page.getByLabel('A note').fill(text);
  await button(page, 'Write it down').click();
  await expect.poll(() => said(page)).toContain(text);
}

/** As in a browser that saves by downloads alone. */
export async function saved(page: Page, press: string): Promise<Download> {
  await page.evaluate(() => delete (window as { showSaveFilePicker?: unknown }).showSaveFilePicker);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    button(page, press).first().click(),
  ]);
  return download;
}

export async function textSaved(page: Page): Promise<string> {
  return readFileSync(await (await saved(page, 'Save the job to disk')).path(), 'utf8');
}

/** A file for a press that asks for one, as in a browser without files that it may write. */
export async function gives(
  page: Page,
  press: string,
  name: string,
  its: string | Uint8Array,
): Promise<void> {
  await page.evaluate(() => delete (window as { showOpenFilePicker?: unknown }).showOpenFilePicker);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    button(page, press).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/yaml', buffer: Buffer.from(its) });
}

/** Resolves when the browser has all that the page has given it to keep: a change after it waits for it. */
export function storesAreQuiet(page: Page): Promise<void> {
  return page.evaluate(async () => {
    for (const { name = '' } of await indexedDB.databases()) {
      // oxlint-disable-next-line no-await-in-loop
      await new Promise<void>((resolve, reject) => {
        const asked = indexedDB.open(name);
        asked.addEventListener('error', () => reject(new Error(`no store ${name}`)));
        asked.addEventListener('success', () => {
          const change = asked.result.transaction([...asked.result.objectStoreNames], 'readwrite');
          change.addEventListener('complete', () => {
            asked.result.close();
            resolve();
          });
        });
      });
    }
  });
}
