import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { askFaults, caseOf, suspicionOf } from '../../src/asking/faults/index.ts';
import { openJob } from '../../src/asking/job/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { suspectText, voiceOf } from '../../src/telling/narrative/index.ts';
import { faultMarks } from '../../src/telling/report/index.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();

// Complaints whose cause is known, by somebody who had not seen the tool.
const { trains, cases } = JSON.parse(
  readFileSync(new URL('../published/complaints.json', import.meta.url), 'utf8'),
) as {
  readonly trains: Record<string, unknown>;
  readonly cases: readonly {
    readonly id: string;
    readonly train: string;
    readonly says: string;
    readonly seen: readonly {
      readonly test: string;
      readonly range: string;
      readonly gear: string;
      readonly outcome: string;
      readonly value?: number;
    }[];
  }[];
};
const experience = { called: 'experience.yaml', text: readFileSync('experience.yaml', 'utf8') };
const voice = voiceOf('en');

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });

// What the command suspects, by what the page wrote down.
async function byTheCommand(page: Page, text: string): Promise<string[]> {
  const train = readTrain(text).train as Train;
  const written = await page.evaluate(() => {
    const key = Object.keys(localStorage).find((name) => name.startsWith('holdturn told '));
    return key === undefined ? '' : localStorage.getItem(key);
  });
  const job = openJob({ called: 'page', text: written ?? '' });
  const { ranking } = suspicionOf(caseOf(train, { experience, job }));
  return (ranking.brackets[0]?.suspects ?? []).map((suspect) => suspectText(suspect, voice));
}

const leading = (page: Page) =>
  page.locator('.symptoms-bracket').first().locator('.symptoms-name').allTextContents();

const settled = (page: Page) => page.waitForSelector('.symptoms-ranking[aria-busy="false"]');

async function answer(
  page: Page,
  kind: 'gears under power' | 'engine braking',
  gear: string,
  saw: RegExp,
) {
  await button(page, 'Another test').tap();
  const group = page.locator('.symptoms-kind', { hasText: kind });
  await group
    .locator('.symptoms-tile')
    .filter({ has: page.getByText(gear, { exact: true }) })
    .tap();
  const told = await page.locator('.symptoms-told li').count();
  await page.locator('.symptoms-answer', { hasText: saw }).first().tap();
  // Shown where it is kept: only then is it acknowledged.
  await expect.poll(() => page.locator('.symptoms-told li').count()).toBe(told + 1);
  await settled(page);
}

describe('a complaint whose cause is known', () => {
  it('leads by touch to its suspect, as the command ranks it, with no network and a reload', async () => {
    const its = cases.find(({ id }) => id.startsWith('c18')) as (typeof cases)[number];
    const text = JSON.stringify(trains[its.train], undefined, 1);
    const { page, complaints } = await open(linkTo(text), {
      viewport: { width: 820, height: 1180 },
      hasTouch: true,
      serviceWorkers: 'allow',
    });
    const ready = 'navigator.serviceWorker.ready.then(({ active }) => active?.state)';
    await expect.poll(() => page.evaluate(ready), { timeout: 15_000 }).toBe('activated');
    // From now on the page is served by its own worker.
    await page.context().setOffline(true);
    await page.reload();
    await page.waitForSelector('.why li');
    await button(page, 'Find a fault').tap();
    await page.locator('textarea').fill(its.says);
    await button(page, 'Read it').tap();
    await page.locator('.symptoms-chip').first().waitFor();
    await button(page, 'On to the questions').tap();
    await settled(page);
    const halfway = Math.floor(its.seen.length / 2);
    for (const [k, { test, range, gear, outcome, value }] of its.seen.entries()) {
      const name = range === gear ? range : `${range} ${gear}`;
      const kind = test === 'road test' ? 'gears under power' : 'engine braking';
      const word = value === undefined ? outcome : `${Number(value.toPrecision(4))}`;
      // oxlint-disable-next-line eslint/no-await-in-loop
      await answer(page, kind, name, new RegExp(`^(?:drives at |brakes at )?${word}`, 'u'));
      if (k !== halfway) continue;
      // oxlint-disable-next-line eslint/no-await-in-loop
      await page.reload();
      // oxlint-disable-next-line eslint/no-await-in-loop
      await page.waitForSelector('.why li, .symptoms');
      // oxlint-disable-next-line eslint/no-await-in-loop
      if ((await page.locator('.symptoms').count()) === 0) await button(page, 'Find a fault').tap();
      // oxlint-disable-next-line eslint/no-await-in-loop
      await page.locator('#test-asked').waitFor();
      expect(await page.locator('.symptoms-told li').count()).toBe(k + 2);
    }
    await page.locator('.symptoms-ranking > summary').tap();
    const named = await leading(page);
    expect(named.length).toBeGreaterThan(0);
    expect((await byTheCommand(page, text)).slice(0, named.length)).toEqual(named);
    expect(named.join()).toContain('front carrier');
    // What may not be done now stands above it all.
    expect(await page.locator('.symptoms-stops').textContent()).toContain('what should drive');
    expect(await accessFaults(page)).toEqual([]);
    expect(complaints.filter((said) => !said.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([]);
  }, 120_000);
});

describe('on the Kestrel', () => {
  it('everything is reached by keys alone, and the suspect opens to its proof and the train', async () => {
    const { page } = await open(linkTo(ourText('kestrel-three-speed')));
    const press = async (name: RegExp) => {
      for (let tabs = 0; tabs < 150; tabs++) {
        // oxlint-disable-next-line eslint/no-await-in-loop
        await page.keyboard.press('Tab');
        // oxlint-disable-next-line eslint/no-await-in-loop
        const found = await page.evaluate(() => {
          const on = document.activeElement;
          return on?.getAttribute('aria-label') ?? on?.textContent ?? '';
        });
        if (name.test(found)) {
          // oxlint-disable-next-line eslint/no-await-in-loop
          await page.keyboard.press('Enter');
          return;
        }
      }
      throw new Error(`no key leads to ${name}`);
    };
    await press(/^Find a fault$/u);
    await page.locator('textarea').focus();
    await page.keyboard.insertText('slips in second when hot');
    await press(/^Read it$/u);
    await page.locator('.symptoms-chip').waitFor();
    await press(/^On to the questions$/u);
    await page.locator('#test-asked').waitFor();
    await press(/^burnt/u);
    await expect.poll(() => page.locator('.symptoms-told li').count()).toBe(2);
    await settled(page);
    await page.locator('body').click({ position: { x: 2, y: 2 } });
    await press(/^Show second brake: slips/u);
    await page.locator('.symptoms-proof tbody tr').first().waitFor();
    expect(await page.locator('.symptoms-unexplained').count()).toBe(0);
    await expect.poll(() => page.locator('.why').count()).toBe(2);
    expect(await page.locator('.figure-caption').nth(1).textContent()).toContain(
      'second brake: slips',
    );
  }, 60_000);

  it('an answer is struck and not erased, and what the driver did not mean is taken off', async () => {
    const text = ourText('kestrel-three-speed');
    const { page } = await open(linkTo(text), { hasTouch: true });
    await button(page, 'Find a fault').tap();
    await page.locator('textarea').fill('slips in second and third, it smells of fish');
    await button(page, 'Read it').tap();
    await expect.poll(() => page.locator('.symptoms-chip').count()).toBe(2);
    expect(await page.locator('.symptoms-unused').textContent()).toContain('smells of fish');
    await button(page, /^Take off: D 3/u).tap();
    await expect.poll(() => page.locator('.symptoms-chip:not(.symptoms-off)').count()).toBe(1);
    await settled(page);
    expect((await byTheCommand(page, text)).slice(0, 3)).toEqual((await leading(page)).slice(0, 3));
    await button(page, /^Put back/u).tap();
    await expect.poll(() => page.locator('.symptoms-chip:not(.symptoms-off)').count()).toBe(2);
    await button(page, /^Strike: driver says/u).tap();
    await expect.poll(() => page.locator('.symptoms-told s').count()).toBeGreaterThan(0);
    await expect.poll(() => page.locator('.symptoms-chip').count()).toBe(0);
    await button(page, /^Restore: driver says/u).tap();
    await expect.poll(() => page.locator('.symptoms-chip').count()).toBe(2);
  }, 60_000);

  it('writes into the open job what the command reads, what was told before it too', async () => {
    const { page } = await open(linkTo(ourText('kestrel-three-speed')), { hasTouch: true });
    await button(page, 'Find a fault').tap();
    await page.locator('textarea').fill('slips in second');
    await button(page, 'Read it').tap();
    await page.locator('.symptoms-chip').waitFor();
    await page.locator('.symptoms-keeping > summary').tap();
    await page.locator('.symptoms-keeping .job-initials input').fill('TW');
    await button(page, 'Begin a job').tap();
    await button(page, /^Take one answer from before/u).tap();
    await expect.poll(() => page.locator('.symptoms-told li').count()).toBe(1);
    await button(page, 'On to the questions').tap();
    await page.locator('.symptoms-answer', { hasText: 'burnt' }).tap();
    await expect.poll(() => page.locator('.symptoms-told li').count()).toBe(2);
    await button(page, 'Job').tap();
    await expect.poll(() => page.locator('main').textContent()).toContain('burnt');
  }, 60_000);

  it('says it in Spanish, and a phone shows one column', async () => {
    const { page } = await open(linkTo(ourText('kestrel-three-speed')), {
      locale: 'es-ES',
      viewport: { width: 390, height: 844 },
      hasTouch: true,
    });
    await button(page, 'Buscar la avería').tap();
    await page.locator('textarea').fill('patina en segunda en caliente');
    await button(page, 'Leerlo').tap();
    await expect.poll(() => page.locator('.symptoms-chip').textContent()).toContain('patina');
    await button(page, 'A las preguntas').tap();
    await page.locator('#test-asked').waitFor();
    expect(await page.locator('.symptoms-stops').textContent()).toContain(
      'Nada de acelerar fuerte',
    );
    expect(await accessFaults(page)).toEqual([]);
    const sizes = await page.evaluate(() => {
      const { clientWidth, scrollWidth } = document.documentElement;
      const large = [...document.querySelectorAll('.symptoms-ask button.large')];
      return {
        over: scrollWidth - clientWidth,
        least: Math.min(...large.map((one) => one.clientHeight)),
      };
    });
    expect(sizes.over).toBeLessThanOrEqual(0);
    expect(sizes.least).toBeGreaterThanOrEqual(68); // without its border
  }, 60_000);

  it('the picture of all faults has the marks of the command, and a cell shows the train', async () => {
    const text = ourText('kestrel-three-speed');
    const { page } = await open(linkTo(text), { hasTouch: true });
    await button(page, 'Find a fault').tap();
    await page.locator('.matrix > summary').tap();
    await page.locator('.matrix-cell').first().waitFor();
    const { matrix } = askFaults(readTrain(text).train as Train, {}).report;
    const row = matrix.rows.findIndex(({ faults: [fault] }) => {
      return fault && 'device' in fault && fault.device === 'low sprag' && fault.is === 'backwards';
    });
    const line = page
      .locator('.matrix-table tr')
      .filter({ has: page.locator('th', { hasText: /^low sprag: backwards/u }) });
    const shown = await line
      .locator('.matrix-cell button')
      .evaluateAll((cells) =>
        cells.map((cell) =>
          [...cell.querySelectorAll(':scope > span:not(.unseen)')].map((mark) =>
            mark.className === 'matrix-same' ? '.' : mark.textContent,
          ),
        ),
      );
    expect(shown).toEqual(matrix.rows[row]?.cells.map((cell) => faultMarks(cell, voice)));
    await line.locator('.matrix-cell button').nth(1).tap();
    await expect
      .poll(() => page.locator('.figure-caption').nth(1).textContent())
      .toContain('low sprag: backwards');
    expect(await page.locator('.figure-caption').nth(1).textContent()).toContain('tied up');
    expect(await accessFaults(page)).toEqual([]);
  }, 60_000);

  it('why it failed: two touches write what was found, and lead back to its cause', async () => {
    const { page } = await open(linkTo(ourText('kestrel-three-speed')), { hasTouch: true });
    await button(page, 'Find a fault').tap();
    await page.locator('.symptoms-failed > summary').tap();
    const card = page.locator('.symptoms-failed');
    await card.getByRole('button', { name: 'second brake', exact: true }).tap();
    await card.getByRole('button', { name: 'burnt', exact: true }).tap();
    await expect.poll(() => card.locator('.symptoms-failures li').count()).toBeGreaterThan(0);
    expect(await card.locator('.symptoms-failures li').first().textContent()).toContain(
      'The circuit of the second brake leaks',
    );
  }, 60_000);
});
