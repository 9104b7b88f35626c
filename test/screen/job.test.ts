import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { readJob } from '../../src/shop/records/index.ts';
import { ROOT } from '../sources.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { begin, button, gives, note, noticed, said, textSaved } from './jobs.ts';

const open = withBrowser();
const folder = mkdtempSync(path.join(tmpdir(), 'holdturn-page-job-'));
afterAll(() => rmSync(folder, { recursive: true }));

const entries = (page: Page) => page.locator('.jobs-entries > li');

const command = (...words: string[]) =>
  execFileSync(process.execPath, [path.join(ROOT, 'dist/cli.cjs'), ...words], {
    encoding: 'utf8',
    cwd: folder,
  });

describe('a job on the page', () => {
  it('is written as the command writes it, and the command reads and goes on with it', async () => {
    const { page, complaints } = await open();
    await begin(page);
    await note(page, 'the drum is scored');
    await note(page, 'the wrong unit');
    await button(page, 'Strike: the wrong unit').click();
    await page.getByLabel('Why is it struck?').fill('another unit');
    await page.keyboard.press('Enter');
    await expect
      .poll(() => page.locator('.jobs-said s').allTextContents())
      .toEqual(['the wrong unit']);
    await page.getByLabel('What do you sign?').fill('build sheet');
    await page.keyboard.press('Enter');
    await expect.poll(() => said(page)).toContain('Signed: build sheet');
    expect(await accessFaults(page)).toEqual([]);

    const text = await textSaved(page);
    await noticed(page).toContain('Saved as unit-7-green-tag.job.yaml.');
    const { job, problems } = readJob(text);
    expect(problems).toEqual([]);
    expect(job).toMatchObject({ unit: 'unit 7, green tag', by: 'TW' });
    expect(job?.train?.file).toBe('kestrel-three-speed.train.yaml');
    // The same lines, and nothing else: header, and each entry behind an empty line.
    expect(text).toMatch(
      /^# An entry a line[^]*\nentries:\n(?:\n- \{ .*, id: [a-z0-9]{8} \}\n){4}$/u,
    );

    const file = path.join(folder, 'a.job.yaml');
    writeFileSync(file, text);
    const train = path.join(ROOT, 'trains/kestrel-three-speed.train.yaml');
    command('job', 'add', file, 'seen', 'D 2: slips', '--by', 'HT', '--train', train);
    const shown = command('job', 'show', file);
    expect(shown).toContain('~~the wrong unit~~\n');
    expect(shown).toContain('Signed: build sheet\n');
    // The hash that the command prints of the same train.
    const { hash } = JSON.parse(command('job', 'show', file, '--json')).train;
    command('job', 'new', 'b.job.yaml', '--unit', 'b', '--by', 'HT', '--train', train);
    expect(JSON.parse(command('job', 'show', 'b.job.yaml', '--json')).train.hash).toBe(hash);
    expect(complaints).toEqual([]);
  });

  it('is there again after a reload, in every tab, and a discarded one is gone from all', async () => {
    const { page, address } = await open();
    await begin(page);
    await note(page, 'one');
    await page.reload();
    await button(page, 'Job').click();
    await expect.poll(() => said(page)).toEqual(['one']);
    const other = await page.context().newPage();
    await other.goto(address);
    await button(other, 'Job').click();
    await expect.poll(() => said(other)).toEqual(['one']);
    // Each writes, and each sees what the other wrote.
    await note(other, 'two');
    await expect.poll(() => said(page)).toEqual(['one', 'two']);
    await note(page, 'three');
    await expect.poll(() => said(other)).toEqual(['one', 'two', 'three']);
    await button(page, 'Discard this job…').click();
    await button(page, 'Discard unit-7-green-tag.job.yaml').click();
    await expect.poll(() => entries(page).count()).toBe(0);
    await expect.poll(() => entries(other).count()).toBe(0);
    await page.reload();
    await button(page, 'Job').click();
    await button(page, 'Begin a job').waitFor();
    expect(await page.locator('.jobs-list').count()).toBe(0);
  });

  it('stands in a list that tells what is open, said last and signed, as the command does', async () => {
    const train = path.join(ROOT, 'trains/kestrel-three-speed.train.yaml');
    const its = ['c.job.yaml', '--by', 'HT', '--train', train];
    command('job', 'new', ...its, '--unit', 'bench 4', '--complaint', 'slips when hot');
    const read = 'feeler: [1.38 mm, 1.40 mm, 1.39 mm]';
    command(
      'job',
      'add',
      'c.job.yaml',
      'reading',
      'second brake',
      read,
      '--by',
      'HT',
      '--train',
      train,
    );
    const text = readFileSync(path.join(folder, 'c.job.yaml'), 'utf8');
    const signed = command(
      'job',
      'add',
      'c.job.yaml',
      'signed',
      'build sheet',
      '--by',
      'HT',
      '--train',
      train,
    );
    expect(signed).toContain('still open, outside, in doubt or not proved: second brake.');

    const { page } = await open();
    await begin(page);
    await gives(page, 'Open a job from disk…', 'c.job.yaml', text);
    await noticed(page).toContain('c.job.yaml is open.');
    await expect
      .poll(() => page.locator('.jobs-sign').textContent())
      .toContain('This stands open, outside, in doubt or not proved: second brake.');
    await page.getByLabel('What do you sign?').fill('build sheet');
    await page.keyboard.press('Enter');
    await expect
      .poll(() => page.locator('.jobs-sign').textContent())
      .toContain('Signed with this still open, outside, in doubt or not proved: second brake.');
    const list = page.locator('.jobs-list li');
    expect(await list.count()).toBe(2);
    const [first, second] = await list.allTextContents();
    expect(first).toContain('nothing written yet');
    expect(second).toContain('bench 42 entries');
    expect(second).toContain('Signed: build sheet');
    expect(second).toContain('stands open: second brake');
    expect(second).toContain('signed by TW: build sheet');
    expect(second).toContain('saved as c.job.yaml; since then 1 more here');
    await list.first().getByRole('button').click();
    await expect.poll(() => page.locator('h2.job-unit').textContent()).toBe('unit 7, green tag');
    // Nothing is discarded but by its name, and saving it is offered first.
    await button(page, 'Discard this job…').click();
    const group = page.getByRole('group', { name: 'Discard this job…' });
    await expect
      .poll(() => group.getByRole('button').allTextContents())
      .toEqual(['Save it with its photographs', 'Discard unit-7-green-tag.job.yaml', 'Cancel']);
    await group.getByRole('button', { name: 'Cancel' }).click();
    expect(await list.count()).toBe(2);
  });

  it('tells that another train is on the page, and takes one back to its own', async () => {
    const { page } = await open();
    await begin(page);
    await page.getByText('File', { exact: true }).click();
    await button(page, 'wren plain set').click();
    const bar = page.locator('.job-bar');
    await expect.poll(() => bar.textContent()).toContain('another train is on the page');
    await button(page, 'Bring its train').click();
    await expect.poll(() => page.locator('h1').textContent()).toContain('Kestrel');
    expect(await bar.textContent()).not.toContain('another train');
  });

  it.each([
    ['en', 390, 844],
    ['es', 390, 844],
    ['en', 820, 1180],
    ['es', 1280, 900],
  ] as const)('in %s fits %i by %i, light and dark, without a fault of access', async (...its) => {
    const [lang, width, height] = its;
    const locale = lang === 'es' ? 'es-ES' : 'en-GB';
    const { page } = await open('', { viewport: { width, height }, locale });
    await button(page, lang === 'es' ? 'Trabajo' : 'Job').click();
    const field = page.locator('.job-initials input');
    await field.fill('TW');
    await page.locator('.job-bar button.large-main').click();
    await page.locator('.jobs-note textarea').fill(`a note ${'with a very long name'.repeat(6)}`);
    await page.locator('.jobs-note button').click();
    await expect.poll(() => page.locator('.jobs-said').count()).toBe(1);
    await page.locator('.jobs-entries button').click();
    for (const scheme of ['light', 'dark'] as const) {
      // oxlint-disable-next-line no-await-in-loop
      await page.emulateMedia({ colorScheme: scheme });
      // oxlint-disable-next-line no-await-in-loop
      expect(await accessFaults(page)).toEqual([]);
      // oxlint-disable-next-line no-await-in-loop
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(width);
    }
    // What is pressed in the middle of work is large enough for a glove.
    const small = await page
      .locator('.jobs button.large, .job-take')
      .evaluateAll((all) =>
        all.filter((one) => one.getBoundingClientRect().height < 72).map((one) => one.textContent),
      );
    expect(small).toEqual([]);
  });

  it('takes a second tap on the same for the first, when a job is begun too', async () => {
    const { page } = await open();
    await button(page, 'Job').click();
    await page.getByLabel('Your initials').fill('TW');
    await button(page, 'Begin a job').dblclick();
    await page.getByRole('region', { name: 'The open job' }).waitFor();
    expect(await page.locator('.jobs-list li').count()).toBe(1);
    await page.getByLabel('A note').fill('one');
    await page.evaluate(() => {
      const press = document.querySelector<HTMLButtonElement>('.jobs-note button');
      press?.click();
      press?.click();
    });
    await note(page, 'two');
    expect(await said(page)).toEqual(['one', 'two']);
  });

  it('is worked by keys alone', async () => {
    const { page } = await open();
    await button(page, 'Job').focus();
    await page.keyboard.press('Enter');
    await page.getByLabel('Your initials').waitFor();
    const at = () =>
      page.evaluate(() => document.activeElement?.closest('label, button')?.textContent);
    const tabTo = async (text: string) => {
      for (let n = 0; n < 60; n++) {
        // oxlint-disable-next-line no-await-in-loop
        if ((await at())?.startsWith(text)) return;
        // oxlint-disable-next-line no-await-in-loop
        await page.keyboard.press('Tab');
      }
      throw new Error(`no key leads to ${text}`);
    };
    await tabTo('Your initials');
    await page.keyboard.type('TW');
    await tabTo('Begin a job');
    await page.keyboard.press('Enter');
    await tabTo('A note');
    await page.keyboard.type('by keys');
    await tabTo('Write it down');
    await page.keyboard.press('Space');
    await expect.poll(() => said(page)).toEqual(['by keys']);
    await tabTo('Strike');
    await page.keyboard.press('Enter');
    await page.keyboard.type('a slip');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.jobs-said s').count()).toBe(1);
  });
});
