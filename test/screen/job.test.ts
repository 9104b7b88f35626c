import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { readJob } from '../../src/shop/records/index.ts';
import { ROOT } from '../sources.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { begin, button, note, noticed, said, textSaved } from './jobs.ts';

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
});
