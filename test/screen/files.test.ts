import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const WREN = ourText('wren-plain-set');

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const title = (page: Page) => page.locator('h1');

// A browser that hands files to a page only through its own picker, as most do.
async function picks(page: Page, name: string, text: string | Buffer): Promise<void> {
  await page.evaluate(() => delete (window as { showOpenFilePicker?: unknown }).showOpenFilePicker);
  await page.getByText('File', { exact: true }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByText('Open…').click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/yaml', buffer: Buffer.from(text) });
}

describe('a link', () => {
  it('carries a whole train, and the page makes the same one', async () => {
    const { page } = await open(linkTo(WREN));
    await expect.poll(() => title(page).textContent()).toContain('Wren');
    await page.getByText('File', { exact: true }).click();
    await button(page, 'Make a link').click();
    const made = await page.getByRole('textbox', { name: 'Make a link' }).inputValue();
    await page.goto('about:blank');
    await page.goto(made);
    await expect.poll(() => title(page).textContent()).toContain('Wren');
  });

  it('that is damaged is said to be, and the train of ours stands', async () => {
    const { page } = await open(linkTo(WREN).slice(0, -20));
    await expect.poll(() => page.locator('.desk-notices').textContent()).toContain('damaged');
    expect(await title(page).textContent()).toContain('Kestrel');
  });
});

describe('a file', () => {
  it('from disk is opened, and saved with all its bytes', async () => {
    const { page } = await open();
    await picks(page, 'mine.train.yaml', WREN);
    await expect.poll(() => title(page).textContent()).toContain('Wren');
    await page.evaluate(
      () => delete (window as { showSaveFilePicker?: unknown }).showSaveFilePicker,
    );
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      button(page, 'Save').click(),
    ]);
    expect(download.suggestedFilename()).toBe('mine.train.yaml');
    expect(readFileSync(await download.path(), 'utf8')).toBe(WREN);
  });

  it.each([
    ['a broken one', WREN.replace('ring:', 'rnig:'), 'Line'],
    ['one of a later version', WREN.replace('holdturn: 1', 'holdturn: 2'), 'newer version'],
    ['one of five megabytes', `# ${'a'.repeat(5_000_000)}\n${WREN}`, 'too large'],
  ])('%s is told in words, and undo brings back what was there', async (_, text, says) => {
    const { page, complaints } = await open();
    await picks(page, 'odd.train.yaml', text);
    const told = page.getByRole('region', { name: 'What is wrong with the file' });
    await expect.poll(() => told.textContent()).toContain(says);
    await button(page, 'Undo').click();
    await expect.poll(() => told.count()).toBe(0);
    expect(await title(page).textContent()).toContain('Kestrel');
    expect(complaints).toEqual([]);
  });

  it('that is no text is refused, and nothing is lost', async () => {
    const { page } = await open();
    await picks(page, 'odd.train.yaml', Buffer.from([0xff, 0xfe, 0x00, 0x81]));
    await expect.poll(() => page.locator('.desk-notices').textContent()).toContain('UTF-8');
    expect(await title(page).textContent()).toContain('Kestrel');
  });
});

describe('unsaved work', () => {
  it('is offered again after the page has died', async () => {
    const { page, address } = await open(linkTo(WREN));
    await expect.poll(() => title(page).textContent()).toContain('Wren');
    // A link that was opened is not on disk: it is kept.
    await page.waitForTimeout(800);
    const context = page.context();
    await page.close();
    const again = await context.newPage();
    await again.goto(address);
    const status = again.locator('.desk-notices');
    await expect.poll(() => status.textContent()).toContain('Unsaved work');
    await button(again, 'Restore').click();
    await expect.poll(() => title(again).textContent()).toContain('Wren');
  });

  it('is warned of where the browser keeps nothing', async () => {
    const { page } = await open();
    await page.addInitScript(() => {
      Object.defineProperty(window, 'indexedDB', { value: undefined });
      Object.defineProperty(window, 'localStorage', {
        get() {
          throw new DOMException('no', 'SecurityError');
        },
      });
    });
    await page.reload();
    await page.waitForSelector('h1');
    await page.evaluate((hash) => void (location.hash = hash), linkTo(WREN));
    await expect.poll(() => page.locator('.desk-notices').textContent()).toContain('keeps nothing');
    expect(await title(page).textContent()).toContain('Wren');
  });

  it('two tabs on one file hear of each other, and each keeps its own text', async () => {
    const { page, address } = await open();
    const other = await page.context().newPage();
    await other.goto(address);
    await expect.poll(() => page.locator('.desk-notices').textContent()).toContain('another tab');
    await expect.poll(() => other.locator('.desk-notices').textContent()).toContain('another tab');
  });
});
