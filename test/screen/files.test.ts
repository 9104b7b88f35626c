import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const given = mkdtempSync(path.join(tmpdir(), 'holdturn-files-'));
afterAll(() => rmSync(given, { recursive: true }));
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
  const file = path.join(given, name);
  writeFileSync(file, text);
  await chooser.setFiles(file);
}

async function fromMenu(page: Page, entry: string): Promise<void> {
  await page.getByText('File', { exact: true }).click();
  await button(page, entry).click();
}

// Files that the page may write back, in a folder that the browser keeps for it: `Open…` gives
// them in this order, and `onDisk` reads them.
async function disk(page: Page, files: Readonly<Record<string, string>>): Promise<void> {
  await page.evaluate(async (all) => {
    const folder = await navigator.storage.getDirectory();
    const handles: FileSystemFileHandle[] = [];
    for (const [name, text] of Object.entries(all)) {
      const handle = await folder.getFileHandle(name, { create: true });
      const stream = await handle.createWritable();
      await stream.write(text);
      await stream.close();
      handles.push(handle);
    }
    Object.assign(window, { showOpenFilePicker: async () => handles.splice(0, 1) });
  }, files);
}

const onDisk = (page: Page, name: string) =>
  page.evaluate(async (its) => {
    const folder = await navigator.storage.getDirectory();
    return (await (await folder.getFileHandle(its)).getFile()).text();
  }, name);

const said = (page: Page) => expect.poll(() => page.locator('.desk-notices').textContent());

async function describeSet(page: Page, name: string): Promise<void> {
  await fromMenu(page, 'New, from nothing');
  await page.getByRole('textbox', { name: 'Its name' }).fill(name);
  await page.locator('.describe-ask').getByRole('button', { name: 'Next', exact: true }).click();
  await page.waitForTimeout(50);
}

describe('a document', () => {
  it('keeps its undo to itself, and saving says which file it wrote', async () => {
    const { page } = await open();
    const [a, b] = [WREN, WREN.replace('Wren', 'Linnet')];
    await disk(page, { 'a.train.yaml': a, 'b.train.yaml': b });
    await fromMenu(page, 'Open…');
    await expect.poll(() => title(page).textContent()).toContain('Wren');
    await fromMenu(page, 'Open…');
    await expect.poll(() => title(page).textContent()).toContain('Linnet');
    expect(await button(page, 'Undo').isDisabled()).toBe(true);
    await page.keyboard.press('Control+z');
    await button(page, 'Save').click();
    await said(page).toContain('Saved as b.train.yaml.');
    expect(await onDisk(page, 'b.train.yaml')).toBe(b);
    expect(await onDisk(page, 'a.train.yaml')).toBe(a);
  });

  it('that is not saved stays when another opens, with its steps, until it is discarded', async () => {
    const { page } = await open();
    await describeSet(page, 'front');
    await fromMenu(page, 'wren plain set');
    await expect.poll(() => title(page).textContent()).toContain('Wren');
    await said(page).toContain('Unsaved work on new.train.yaml');
    await button(page, 'Restore').click();
    await expect.poll(() => title(page).textContent()).toContain('new.train.yaml');
    expect(await button(page, 'Undo').isEnabled()).toBe(true);
    await fromMenu(page, 'wren plain set');
    await button(page, 'Discard new.train.yaml').click();
    await expect.poll(() => button(page, 'Restore').count()).toBe(0);
  });

  it('that is not saved is offered again when the tab has gone, and so is every other', async () => {
    const { page, address } = await open();
    await describeSet(page, 'front');
    await fromMenu(page, 'wren plain set');
    await said(page).toContain('Unsaved work on new.train.yaml');
    await describeSet(page, 'rear');
    await fromMenu(page, 'wren plain set');
    await expect.poll(() => button(page, 'Restore').count()).toBe(2);
    const context = page.context();
    await page.close();
    const again = await context.newPage();
    await again.goto(address);
    await expect.poll(() => button(again, 'Restore').count()).toBe(2);
    const notices = await again.locator('.desk-notices p span').allTextContents();
    expect(new Set(notices).size).toBe(2);
  });

  it('is offered beside one of which only a part was kept', async () => {
    const { page, address } = await open();
    await describeSet(page, 'front');
    await fromMenu(page, 'wren plain set');
    await said(page).toContain('Unsaved work on new.train.yaml');
    await page.evaluate(async () => {
      const request = indexedDB.open('holdturn');
      await new Promise((resolve) => (request.onsuccess = resolve));
      const store = request.result.transaction('drafts', 'readwrite').objectStore('drafts');
      store.put(undefined, 'nothing');
      store.put({ tab: 'gone', name: 'half' }, 'half');
      store.put({ tab: 'gone', name: 'late', text: 'x', at: 'yesterday' }, 'late');
      await new Promise((resolve) => (store.transaction.oncomplete = resolve));
    });
    const context = page.context();
    await page.close();
    const again = await context.newPage();
    await again.goto(address);
    await said(again).toContain('Unsaved work on new.train.yaml');
    expect(await button(again, 'Restore').count()).toBe(1);
  });
});

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

describe('a file that the command hands over', () => {
  it('is fetched by its short address, and told to be gone where the command is', async () => {
    const { page, address } = await open();
    await page.route('**/given/abc/*', (route) =>
      route.fulfill({ contentType: 'text/plain; charset=utf-8', body: WREN }),
    );
    await page.goto('about:blank');
    await page.goto(`${address}#given/abc/my%20unit.train.yaml`);
    await expect.poll(() => title(page).textContent()).toContain('Wren');
    await page.goto('about:blank');
    await page.goto(`${address}#given/gone/x.train.yaml`);
    await said(page).toContain('start it again');
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
  ])('%s is told in words, and another file opens behind it', async (_, text, says) => {
    const { page, complaints } = await open();
    await picks(page, 'odd.train.yaml', text);
    const told = page.getByRole('region', { name: 'What is wrong with the file' });
    await expect.poll(() => told.textContent()).toContain(says);
    await fromMenu(page, 'kestrel three speed');
    await expect.poll(() => told.count()).toBe(0);
    expect(await title(page).textContent()).toContain('Kestrel');
    expect(complaints).toEqual([]);
  });

  it('of more than any train has is refused before it is read', async () => {
    const { page } = await open();
    await picks(page, 'huge.train.yaml', Buffer.alloc(17 * 2 ** 20, 0x23));
    await said(page).toContain('more than 16 MB');
    expect(await title(page).textContent()).toContain('Kestrel');
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

  it('is there as it was after a reload, under one offer and no second', async () => {
    const { page } = await open();
    await describeSet(page, 'front');
    await page.reload();
    await expect.poll(() => title(page).textContent()).toContain('new.train.yaml');
    await fromMenu(page, 'wren plain set');
    await said(page).toContain('Unsaved work on new.train.yaml');
    expect(await button(page, 'Restore').count()).toBe(1);
    await page.reload();
    await expect.poll(() => title(page).textContent()).toContain('Wren');
    await said(page).toContain('Unsaved work on new.train.yaml');
    expect(await button(page, 'Restore').count()).toBe(1);
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
