import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { entryText, newJobText, readJob } from '../../src/shop/records/index.ts';
import { withBrowser } from './browser.ts';
import { begin, button, gives, note, noticed, said, saved, textSaved } from './jobs.ts';

const open = withBrowser();
const alert = (page: Page) => expect.poll(() => page.getByRole('alert').textContent());
// How much the browser lets this page keep; without a size, as much as it likes.
async function allow(page: Page, quotaSize?: number): Promise<void> {
  const debug = await page.context().newCDPSession(page);
  const { origin } = new URL(page.url());
  await debug.send('Storage.overrideQuotaForOrigin', { origin, ...(quotaSize && { quotaSize }) });
}

async function writes(page: Page, text: string): Promise<void> {
  await page.getByLabel('A note').fill(text);
  await button(page, 'Write it down').click();
}

// A picture of nothing but chance, which no coding makes small: some megabytes.
async function takesLarge(page: Page): Promise<void> {
  const address = await page.evaluate(() => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 1600, height: 1600 });
    const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
    const image = pen.createImageData(1600, 1600);
    for (let at = 0; at < image.data.length; at += 4096) {
      crypto.getRandomValues(image.data.subarray(at, at + 4096));
    }
    pen.putImageData(image, 0, 0);
    return canvas.toDataURL('image/jpeg', 0.9);
  });
  const buffer = Buffer.from(address.slice(address.indexOf(',') + 1), 'base64');
  await page
    .getByLabel('Photograph from a file')
    .setInputFiles({ name: 'a.jpg', mimeType: 'image/jpeg', buffer });
}

describe('in a browser with no room left', () => {
  it('nothing is lost, which is told, and all is kept as soon as there is room', async () => {
    const { page, address } = await open();
    // The browser looks at it again only after a while, so it is told before it looks.
    await allow(page, 500_000);
    await begin(page);
    await note(page, 'before');
    await takesLarge(page);
    await alert(page).toContain('no room left');
    await writes(page, 'while it is full');
    await expect.poll(() => said(page)).toHaveLength(3);
    expect(await page.getByText('on the screen alone, not kept by the browser').count()).toBe(2);
    await alert(page).toContain('no room left');
    // It is in the page, and in what is saved to disk, the picture too.
    expect(readJob(await textSaved(page)).job?.entries).toHaveLength(3);
    const zip = readFileSync(await (await saved(page, 'Save it with its photographs')).path());
    expect(Object.values(unzipSync(zip)).some((its) => its.length > 500_000)).toBe(true);
    // Another tab knows what is kept, and no more.
    const other = await page.context().newPage();
    await other.goto(address);
    await button(other, 'Job').click();
    await expect.poll(() => said(other)).toEqual(['before']);
    await allow(page);
    await writes(page, 'after');
    await alert(page).toBe('');
    await expect.poll(() => said(other)).toHaveLength(4);
    await expect.poll(() => other.locator('.jobs-gallery img').count()).toBe(1);
  });

  it('a file that is opened is told to be on the screen alone', async () => {
    const { page } = await open();
    await button(page, 'Job').click();
    await page.getByLabel('Your initials').fill('TW');
    await allow(page, 1000);
    const at = '2026-11-25T08:00:00.000Z';
    const told = { kind: 'note', note: 'x'.repeat(1900) } as const;
    const lines = Array.from({ length: 60 }, (_, n) => entryText({ at, who: `W${n}`, told }).text);
    const text = newJobText({ unit: 'bench 4', complaint: '', by: 'HT', at }) + lines.join('');
    await gives(page, 'Open a job from disk…', 'a.job.yaml', text);
    await noticed(page).toContain('a.job.yaml is open.');
    await alert(page).toContain('no room left');
    expect(await page.getByText('on the screen alone, not kept by the browser').count()).toBe(60);
  });

  it('little room is told before there is none', async () => {
    const { page } = await open();
    await page.addInitScript(() => {
      StorageManager.prototype.estimate = async () => ({
        quota: 2 ** 30,
        usage: 2 ** 30 - 2 ** 22,
      });
    });
    await page.reload();
    await begin(page);
    await noticed(page).toContain('little room left');
    // In every room that writes, before a photograph is taken there.
    await button(page, 'Strip it').click();
    await page.getByText('The browser has little room left').waitFor();
  });
});

const FORBIDDEN = {
  'by there being no database': () =>
    Object.defineProperty(window, 'indexedDB', { value: undefined }),
  'by an error when it is opened': () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('not here', 'SecurityError');
    };
  },
};

describe('where the browser keeps nothing', () => {
  it.each(Object.entries(FORBIDDEN))(
    '%s, it is told first, and a job can be saved',
    async (_, how) => {
      const { page } = await open();
      await page.addInitScript(how);
      await page.addInitScript(() => {
        Object.defineProperty(window, 'localStorage', {
          get() {
            throw new DOMException('no', 'SecurityError');
          },
        });
      });
      await page.reload();
      await button(page, 'Job').click();
      await noticed(page).toContain('keeps nothing');
      await begin(page);
      await writes(page, 'on the screen alone');
      await alert(page).toContain('save the job to disk now');
      await expect.poll(() => said(page)).toEqual(['on the screen alone']);
      const { job, problems } = readJob(await textSaved(page));
      expect([job?.entries.length, problems]).toEqual([1, []]);
    },
  );
});

it('that a browser may forget an idle page is said until the job is on disk, once', async () => {
  const { page } = await open('', { isNew: true });
  await begin(page);
  await noticed(page).toContain('seven days');
  await note(page, 'one');
  await textSaved(page);
  await noticed(page).not.toContain('seven days');
  await note(page, 'two');
  await noticed(page).toContain('seven days');
  await button(page, 'I know').click();
  await noticed(page).not.toContain('seven days');
  await page.reload();
  await button(page, 'Job').click();
  await expect.poll(() => said(page)).toHaveLength(2);
  await noticed(page).not.toContain('seven days');
  // Four days later it is not out of the way any more.
  await page.evaluate(() => {
    const before = new Date(Date.now() - 4 * 24 * 60 * 60 * 1000).toISOString();
    localStorage.setItem('holdturn idle known', before);
  });
  await page.reload();
  await button(page, 'Job').click();
  await noticed(page).toContain('seven days');
});
