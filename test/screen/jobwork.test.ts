import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { withBrowser } from './browser.ts';
import { hashOf, newJobText } from '../../src/shop/records/index.ts';
import { begin, button, cannotRead, gives, note } from './jobs.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const TABLET = { viewport: { width: 820, height: 1180 }, hasTouch: true };
const AVOCET = ourText('avocet-four-speed');

const h1 = (page: Page) => page.locator('h1').textContent();
const off = (page: Page) => page.locator('.strip-ways [role="status"]').textContent();
const bar = (page: Page) => page.locator('.job-bar').first();

async function stripsOne(page: Page): Promise<void> {
  await button(page, 'Strip it').click();
  await cannotRead(page);
  await button(page, 'It is off').click();
  await expect.poll(() => off(page)).toMatch(/^1 of /u);
}

// Types readings of a thing of the unit, and writes nothing down.
async function types(page: Page, thing: string, ...numbers: readonly string[]): Promise<void> {
  await button(page, 'Measure').click();
  await page.locator('.measure .tiles button', { hasText: thing }).first().click();
  for (const number of numbers) {
    await page.locator('.decimal-shown input').fill(number);
    await page.keyboard.press('Enter');
  }
}

describe('what is done on one unit', () => {
  it('is not in the next unit of the same type, and is there again in its own', async () => {
    const { page } = await open('', TABLET);
    await begin(page, 'P-3');
    await stripsOne(page);
    await types(page, 'turbine shaft', '0.50', '0.51');
    await expect
      .poll(() => page.locator('.measure-readings button').allTextContents())
      .toHaveLength(2);

    await button(page, 'Job: P-3').click();
    await button(page, 'Begin another job…').click();
    await page.getByLabel('The unit, and how it is marked').fill('P-4');
    await button(page, 'Begin a job').click();
    await page.getByRole('heading', { name: 'P-4' }).waitFor();
    await button(page, 'Strip it').click();
    await expect.poll(() => off(page)).toMatch(/^0 of /u);
    await button(page, 'Measure').click();
    await page.locator('.measure .tiles').waitFor();
    expect(await page.locator('.measure').textContent()).not.toContain('typed');
    await page.locator('.measure .tiles button', { hasText: 'turbine shaft' }).click();
    await page.locator('.decimal-shown').waitFor();
    expect(await page.locator('.measure-readings button').count()).toBe(0);

    await button(page, 'Job: P-4').click();
    await page.locator('.jobs-list button', { hasText: 'P-3' }).click();
    await page.getByRole('heading', { name: 'P-3' }).waitFor();
    await button(page, 'Strip it').click();
    await expect.poll(() => off(page)).toMatch(/^1 of /u);
    await button(page, 'Measure').click();
    await expect.poll(() => page.locator('.measure-readings button').count()).toBe(2);
  });

  it('with no job goes with the text of the train, not with its file’s name alone', async () => {
    const { page, address } = await open(linkTo(ourText('kestrel-three-speed')), TABLET);
    await stripsOne(page);
    const other = ourText('kestrel-three-speed').replace(/^name: .*$/mu, 'name: Another of ours');
    await page.goto(`${address}${linkTo(other)}`);
    await expect.poll(() => h1(page)).toBe('Another of ours');
    await button(page, 'Strip it').click();
    await expect.poll(() => off(page)).toMatch(/^0 of /u);
    await page.goto(`${address}${linkTo(ourText('kestrel-three-speed'))}`);
    await expect.poll(() => off(page)).toMatch(/^1 of /u);
  });
});

describe('a signature', () => {
  it('is told what was typed only, found faulty, off, and never measured; later entries say so', async () => {
    const { page } = await open('', TABLET);
    await begin(page, 'P-3');
    await stripsOne(page);
    await button(page, 'Bushing worn').click();
    await expect.poll(() => button(page, 'Bushing worn').getAttribute('aria-pressed')).toBe('true');
    await types(page, 'turbine shaft', '0.50', '0.51');
    await button(page, 'Job: P-3').click();
    const told = page.locator('.jobs-sign [role="status"]');
    await expect.poll(() => told.textContent()).toContain('not written down: turbine shaft.');
    await expect.poll(() => told.textContent()).toContain('Of the build nothing is written down');
    const text = (await told.textContent()) ?? '';
    expect(text).toContain('Found faulty, and not replaced: pump (Bushing worn).');
    expect(text).toContain('Still off the unit: pump.');
    expect(text).toMatch(/Never measured in this job: .*second brake/u);
    await page.getByLabel('What do you sign?').fill('build sheet');
    await button(page, 'Sign as TW').click();
    await note(page, 'torqued again');
    const later = page.locator('.jobs-entries li', { hasText: 'torqued again' });
    expect(await later.textContent()).toContain('written after TW signed');
    expect(await page.getByText('written after TW signed').count()).toBe(1);
  });
});

describe('a job that is taken up again', () => {
  it('brings its own train, as it was edited last, when the browser was closed', async () => {
    const { page, address } = await open(linkTo(AVOCET), TABLET);
    const its = await h1(page);
    await begin(page, 'A-1');
    const next = await page.context().newPage();
    await next.goto(address);
    await page.close();
    await expect.poll(() => h1(next)).toBe(its);
    await button(next, 'Measure').click();
    await button(next, 'Job: A-1').waitFor();
    expect(await bar(next).textContent()).not.toContain('another train');
  });

  it('keeps the limits that were typed into its train when the browser was closed', async () => {
    const { page, address } = await open(linkTo(AVOCET), TABLET);
    await begin(page, 'A-1');
    await button(page, 'Describe it').click();
    await button(page, 'As text').click();
    await page.locator('.cm-content').click();
    await page.keyboard.press('Control+Home');
    await page.keyboard.type('# limits from the book, p. 9');
    await page.keyboard.press('Enter');
    await button(page, 'Job').click();
    const next = await page.context().newPage();
    await page.close();
    await next.goto(address);
    await expect.poll(() => h1(next)).toContain('Avocet');
    await button(next, 'Describe it').click();
    await button(next, 'As text').click();
    await expect.poll(() => next.locator('.cm-content').textContent()).toContain('the book, p. 9');
  });

  it('neither judges nor writes while another train is on the page', async () => {
    const { page, address } = await open(linkTo(AVOCET), TABLET);
    await begin(page, 'A-1');
    await page.goto(`${address}${linkTo(ourText('kestrel-three-speed'))}`);
    for (const room of ['Measure', 'Strip it', 'Find a fault']) {
      await button(page, room).click();
      await expect.poll(() => bar(page).textContent()).toContain('Nothing is judged or written');
      expect(await page.locator('.measure, .strip, .symptoms').count()).toBe(0);
    }
    await button(page, 'Bring its train').click();
    await page.locator('.symptoms').waitFor();
    expect(await h1(page)).toContain('Avocet');
  });

  it('nor while a file of its name with another text is, unless somebody says it is the same', async () => {
    const { page } = await open('', TABLET);
    await button(page, 'Job').click();
    await page.getByLabel('Your initials').fill('TW');
    const file = 'kestrel-three-speed.train.yaml';
    const head = { unit: 'K-9', complaint: '', by: 'HT', at: '2026-11-25T08:00:00.000Z' };
    const other = newJobText({ ...head, train: { file: `../x/${file}`, hash: '0123456789ab' } });
    await gives(page, 'Open a job from disk…', 'k-9.job.yaml', other);
    await expect.poll(() => bar(page).textContent()).toContain('another text than the job was');
    await button(page, 'Measure').click();
    await expect.poll(() => bar(page).textContent()).toContain('Nothing is judged or written');
    expect(await page.locator('.measure').count()).toBe(0);
    await button(page, 'It is this unit’s, edited since: go on with it').click();
    await page.locator('.measure').waitFor();
    // That is remembered; and a job with the hash of this very text asks nothing.
    await page.reload();
    await button(page, 'Job').click();
    await page.getByRole('heading', { name: 'K-9' }).waitFor();
    expect(await page.getByText('another text').count()).toBe(0);
    const hash = hashOf(ourText('kestrel-three-speed'));
    const its = newJobText({ ...head, by: 'RT', unit: 'K-10', train: { file, hash } });
    await gives(page, 'Open a job from disk…', 'k-10.job.yaml', its);
    await page.getByRole('heading', { name: 'K-10' }).waitFor();
    expect(await page.getByText('another text').count()).toBe(0);
  });
});
