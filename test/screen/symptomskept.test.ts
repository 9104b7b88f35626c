import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { entryMade, entryTold, jobIn, jobMade } from '../../src/asking/job/index.ts';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const KESTREL = linkTo(ourText('kestrel-three-speed'));

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });
const told = (page: Page) => page.locator('.symptoms-told li').allTextContents();

async function says(page: Page, text: string) {
  await page.locator('textarea').fill(text);
  await button(page, 'Read it').click();
}

async function atFault(page: Page) {
  if ((await page.locator('.symptoms').count()) === 0) await button(page, 'Find a fault').click();
  await page.locator('.symptoms').waitFor();
}

describe('what is told in no job', () => {
  it('in two tabs stands in both, and neither writes over the other', async () => {
    const { page } = await open(KESTREL);
    await atFault(page);
    const other = await page.context().newPage();
    await other.goto(page.url());
    await other.waitForSelector('.why li, .symptoms');
    await atFault(other);
    await says(page, 'slips in second');
    await expect.poll(() => told(other)).toHaveLength(1);
    await says(other, 'no reverse');
    await expect.poll(() => told(page)).toHaveLength(2);
    await page.reload();
    await page.waitForSelector('.why li, .symptoms');
    await atFault(page);
    await expect.poll(() => told(page)).toHaveLength(2);
    expect((await told(page)).join()).toMatch(/no reverse.*slips in second/u);
  }, 60_000);

  it('and refused by the browser is said to be gone with the page', async () => {
    const { page } = await open(KESTREL);
    await atFault(page);
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await says(page, 'slips in second');
    await says(page, 'no reverse');
    await expect.poll(() => told(page)).toHaveLength(2);
    const alert = page.locator('.symptoms-ask').getByRole('alert');
    expect(await alert.textContent()).toContain('gone when the page is closed');
  }, 60_000);

  it('and spoilt since is set aside and shown, and the room opens', async () => {
    const { page, complaints } = await open(KESTREL);
    await atFault(page);
    await says(page, 'slips in second');
    await expect.poll(() => told(page)).toHaveLength(1);
    await page.evaluate(() => {
      const key = Object.keys(localStorage).find((name) => name.startsWith('holdturn told '));
      localStorage.setItem(key ?? '', 'ruined: [');
    });
    await page.reload();
    await page.waitForSelector('.why li, .symptoms');
    await atFault(page);
    expect(await page.locator('.symptoms-spoilt').textContent()).toContain('ruined: [');
    await says(page, 'no reverse');
    await expect.poll(() => told(page)).toHaveLength(1);
    const kept = await page.evaluate(() => Object.values(localStorage));
    expect(kept).toContain('ruined: [');
    expect(complaints).toEqual([]);
  }, 60_000);

  it('is of a train of any name', async () => {
    const text = ourText('kestrel-three-speed').replace(/^name: .*$/mu, 'name: from');
    const { page, complaints } = await open(linkTo(text));
    await atFault(page);
    await says(page, 'slips in second');
    await expect.poll(() => told(page)).toHaveLength(1);
    expect(complaints).toEqual([]);
  }, 60_000);
});

describe('the ranking, folded', () => {
  const fold = (page: Page) => page.locator('.symptoms-leader').textContent();

  it('names nobody while nothing was told, and nobody of several that share a chance', async () => {
    const { page } = await open(KESTREL, { viewport: { width: 390, height: 844 } });
    await atFault(page);
    await expect.poll(() => fold(page)).toBe('nothing told yet');
    await says(page, 'flares going into second, then third ok; manual second brakes fine');
    await expect.poll(() => fold(page)).toMatch(/^\d+ % \d+ together, not told apart$/u);
    expect(await page.locator('.symptoms-name').first().textContent()).toContain('second brake');
  }, 60_000);

  it('hides nothing that does not fit, and offers to look at it again', async () => {
    const { page } = await open(KESTREL, { viewport: { width: 390, height: 844 } });
    await atFault(page);
    await says(page, 'D 2 is fine');
    await expect.poll(() => told(page)).toHaveLength(1);
    // As another tab would have told it.
    await page.evaluate((more) => {
      const key = Object.keys(localStorage).find((name) => name.startsWith('holdturn told ')) ?? '';
      localStorage.setItem(key, `${localStorage.getItem(key)}${more}`);
    }, CONTRADICTED.map(entryText).join(''));
    await page.reload();
    await page.waitForSelector('.why li, .symptoms');
    await atFault(page);
    const doubts = page.locator('.symptoms-doubts');
    await doubts.waitFor();
    expect(await page.locator('.symptoms-ranking').getAttribute('open')).toBe(null);
    expect(await doubts.isVisible()).toBe(true);
    const again = doubts.getByRole('button', { name: /^Look again: / });
    const what = (await again.first().textContent())?.replace('Look again: ', '') ?? '-';
    await again.first().click();
    await expect.poll(() => page.locator('#test-asked').textContent()).toContain(what);
  }, 60_000);
});

// The gauge is read again before a unit is opened for the one reading.
const CONTRADICTED = [
  ['pressure', 'good'],
  ['pressure', 'good'],
  ['pressure', 'low'],
] as const;

function entryText([of, saw]: readonly [string, string], k: number): string {
  const at = `2026-01-01T00:00:0${k}.000Z`;
  const text = jobMade({ unit: '-', complaint: '', by: 'page', at });
  const seen = entryTold(['seen', of, saw], {});
  return entryMade({ told: seen }, { who: 'page', at }, jobIn({ called: '', text }).job).text;
}
