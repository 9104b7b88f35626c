import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { questionsOf } from '../../src/shop/lessons/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { misconceptionText, questionText } from '../../src/telling/narrative/index.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { ourText } from './links.ts';

const open = withBrowser();
const KESTREL = readTrain(ourText('kestrel-three-speed')).train as Train;

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

// Degrees of a wheel of the first end view, from its transform.
async function degreesOf(page: Page, member: string): Promise<number> {
  const wheel = page.locator(`.ends-view [data-name="${member}"].end-wheel`).first();
  const transform = (await wheel.getAttribute('transform')) ?? '';
  return Number(/rotate\((-?[\d.]+)\)/u.exec(transform)?.[1] ?? 0);
}

describe('the end view', () => {
  it('turns each wheel at its true speed, a step of degrees at a time', async () => {
    const { page } = await open();
    await button(page, 'Pause').click();
    await page.locator('.ends').scrollIntoViewIfNeeded();
    await button(page, 'Reset marks').click();
    await page.locator('.ends').scrollIntoViewIfNeeded();
    await page.waitForTimeout(200);
    const before = {
      ring: await degreesOf(page, 'front.ring'),
      sun: await degreesOf(page, 'sun shell'),
    };
    await button(page, 'On by +15°').click();
    await page.locator('.ends').scrollIntoViewIfNeeded();
    // First gear: the ring turns with the input, the sun shell at -49/51 of it.
    await expect
      .poll(async () => (await degreesOf(page, 'front.ring')) - before.ring)
      .toBeCloseTo(15, 1);
    const sun = (await degreesOf(page, 'sun shell')) - before.sun;
    expect(sun).toBeCloseTo((15 * -49) / 51, 1);
  });
});

describe('the chart', () => {
  it('opens the reason of each letter, and shifts to a gear', async () => {
    const { page } = await open();
    await page
      .getByRole('button', { name: 'second brake: on, and carries nothing' })
      .first()
      .click();
    await expect
      .poll(() => page.locator('.chart-reason').textContent())
      .toContain('The second brake is on but carries nothing');
    await page
      .locator('.chart tbody')
      .getByRole('button', { name: 'R', exact: true })
      .first()
      .click();
    expect(await page.locator('.figure-caption').first().textContent()).toContain('−2.333');
  });

  it('lists every combination when it is asked', async () => {
    const { page } = await open();
    await page.getByText('Every combination, and the shifts').click();
    await page.getByLabel('only those that drive').uncheck();
    // Below them stand the shifts, in a table of their own.
    const pressed = page.locator('.chart details tbody td:first-child button');
    await expect.poll(() => pressed.count()).toBe(2 ** 5);
  });
});

describe('ask the class', () => {
  it('hides the answer, counts votes by a tap, and meets each wrong one by its reason', async () => {
    const [question] = questionsOf(KESTREL, { seed: 1 });
    if (!question) throw new Error('nothing to ask');
    const { page, complaints } = await open();
    await button(page, 'Ask the class').click();
    const asked = page.locator('.lesson-question');
    await expect.poll(() => asked.textContent()).toBe(questionText(question));
    // Nothing on the sheet tells: no letters, no load path, no reasons.
    expect(await page.locator('.diagram .load, .diagram .letter, .why').count()).toBe(0);
    const choices = page.locator('.lesson-choice');
    const wrong = question.choices.findIndex((choice) => !choice.right);
    await choices.nth(wrong).click();
    await choices.nth(wrong).click();
    await page
      .getByRole('button', { name: /^One vote less/u })
      .nth(wrong)
      .click();
    expect(await choices.nth(wrong).locator('output').textContent()).toBe('1');
    expect(await accessFaults(page)).toEqual([]);
    await button(page, 'Reveal').click();
    const choice = question.choices[wrong];
    const reason = choice && !choice.right ? misconceptionText(choice.misconception) : '';
    await expect.poll(() => page.locator('.lesson-reason').allTextContents()).toContain(reason);
    expect(await page.locator('.diagram .load').count()).toBeGreaterThan(0);
    expect(await page.locator('.why li').count()).toBeGreaterThan(0);
    expect(await accessFaults(page)).toEqual([]);
    await button(page, 'Vote again').click();
    await expect.poll(() => page.locator('.diagram .load').count()).toBe(0);
    expect(complaints).toEqual([]);
  });

  it('keeps set, place and votes through another room and a reload, and goes by keys', async () => {
    const { page } = await open();
    await button(page, 'Ask the class').click();
    await page.getByLabel('Question set').fill('4');
    await page.getByLabel('Question set').press('Enter');
    await page.getByLabel('Question set').blur();
    const asked = page.locator('.lesson-question');
    const expected = questionsOf(KESTREL, { seed: 4 }).map((question) => questionText(question));
    await expect.poll(() => asked.textContent()).toBe(expected[0]);
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowLeft');
    await expect.poll(() => asked.textContent()).toBe(expected[1]);
    const votes = () => page.locator('.lesson-choice output').allTextContents();
    for (const key of ['a', 'b', 'b', 'Shift+b']) await page.keyboard.press(key);
    const counted = ['1', '1'];
    await expect.poll(async () => (await votes()).slice(0, 2)).toEqual(counted);
    // Nobody votes as most have voted: no shares before the answer.
    expect(await page.locator('.lesson-share').count()).toBe(0);
    await button(page, 'Find a fault').click();
    await button(page, 'Ask the class').click();
    await expect.poll(() => asked.textContent()).toBe(expected[1]);
    expect((await votes()).slice(0, 2)).toEqual(counted);
    await page.reload();
    await expect.poll(() => asked.textContent()).toBe(expected[1]);
    expect((await votes()).slice(0, 2)).toEqual(counted);
    // What was pressed by a mouse does not keep the space bar.
    await page.getByRole('button', { name: 'Full screen', exact: true }).click();
    await expect.poll(() => page.evaluate('document.fullscreenElement !== null')).toBe(true);
    await page.keyboard.press(' ');
    expect(await page.evaluate('document.fullscreenElement !== null')).toBe(true);
    await expect.poll(() => page.locator('.lesson-right').count()).toBe(1);
    expect(await page.locator('.lesson-share').count()).toBeGreaterThan(1);
  });
});

describe('every picture', () => {
  it('is to be had as SVG and as PNG, and has a twin as a table', async () => {
    const { page } = await open();
    const figures = page.locator('.figure');
    await expect.poll(() => figures.count()).toBeGreaterThan(2);
    for (let k = 0; k < (await figures.count()); k++) {
      const figure = figures.nth(k);
      for (const kind of ['SVG', 'PNG']) {
        const [download] = await Promise.all([
          page.waitForEvent('download'),
          figure.getByRole('button', { name: kind, exact: true }).click(),
        ]);
        expect(download.suggestedFilename()).toMatch(kind === 'SVG' ? /\.svg$/u : /\.png$/u);
      }
      await figure.getByRole('button', { name: 'As a table' }).click();
      await expect.poll(() => figure.locator('table tr').count()).toBeGreaterThan(1);
    }
    expect(await accessFaults(page)).toEqual([]);
  });
});
