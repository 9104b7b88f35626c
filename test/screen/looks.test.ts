import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { questionsOf } from '../../src/shop/lessons/index.ts';
import { ROOT } from '../sources.ts';
import { ours } from '../trains.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const caption = (page: Page, k: number) => page.locator('.figure-caption').nth(k).textContent();
// Where a thing begins on the sheet, in pixels from its head.
const topOf = async (page: Page, what: string) =>
  (await page.locator(what).first().boundingBox())?.y ?? Number.NaN;

describe('the diagram', () => {
  it('fills the screen for the end of the room, and its gears are there', async () => {
    const { page } = await open();
    await button(page, 'Full screen').first().click();
    const full = 'document.fullscreenElement?.querySelector(".diagram svg")?.clientHeight';
    await expect.poll(() => page.evaluate(full)).toBeGreaterThan(500);
    await page.locator('.figure-when-large').getByRole('button', { name: '3' }).click();
    await expect.poll(() => caption(page, 0)).toBe('Fig. 1. D 3: 1');
    await button(page, 'Full screen').first().click();
    await expect.poll(() => page.evaluate('document.fullscreenElement')).toBe(null);
  });

  it('tells a keyboard and a screen reader what hands can do', async () => {
    const { page } = await open();
    const help = await page.locator('.diagram svg').getAttribute('aria-describedby');
    const told = await page.locator(`[id="${help}"]`).textContent();
    expect(told).toContain('the arrows turn, Enter holds and releases');
  });

  it('has dials and devices for a finger in a glove on a phone, and lets the page scroll', async () => {
    const { page } = await open('', PHONE);
    const reaches = page.locator('.dial .diagram-reach');
    for (let k = 0; k < (await reaches.count()); k++) {
      const box = await reaches.nth(k).boundingBox();
      expect(box?.width).toBeGreaterThanOrEqual(44);
      expect(box?.height).toBeGreaterThanOrEqual(44);
    }
    expect(await page.locator('.device .diagram-reach').count()).toBe(7);
    const stops = (what: string) =>
      page
        .locator(what)
        .first()
        .evaluate((mark) => getComputedStyle(mark).touchAction);
    expect(await stops('.dial')).toBe('none');
    expect(await stops('.diagram')).toBe('auto');
    expect(await stops('.diagram svg')).toBe('auto');
  });

  it('applies a device by a tap between its plates', async () => {
    const { page } = await open('', { hasTouch: true });
    const box = await page.locator('[data-name="direct clutch"] .diagram-reach').boundingBox();
    if (!box) throw new Error('no reach');
    await page.touchscreen.tap(box.x + box.width * 0.58, box.y + box.height * 0.12);
    await expect.poll(() => caption(page, 0)).toMatch(/: 1$/u);
  });

  it('stands before what is asked least on a phone, the gears at the thumb', async () => {
    const { page } = await open('', PHONE);
    await page.locator('.chart').waitFor();
    const order = ['.diagram', '.page-tools', '.ends', '.chart', '.margins'];
    const tops = await Promise.all(order.map((what) => topOf(page, what)));
    expect(tops).toEqual(tops.toSorted((a, b) => a - b));
    // What is pressed most lies at the thumb, wherever the page is.
    for (const what of ['.gears', '.page-thumb button[aria-pressed="true"]']) {
      const top = await topOf(page, what);
      expect(top, what).toBeGreaterThan(0.7 * PHONE.viewport.height);
      expect(top, what).toBeLessThan(PHONE.viewport.height);
    }
  });

  it('has no empty margin about it where it is wider than the window', async () => {
    const viewport = { width: 700, height: 450 };
    const { page } = await open('', { viewport, deviceScaleFactor: 2 });
    const scale = await page.locator('.diagram svg').evaluate((svg) => {
      const { width, height } = (svg as SVGSVGElement).viewBox.baseVal;
      return svg.clientWidth / width / (svg.clientHeight / height);
    });
    expect(scale).toBeCloseTo(1, 1);
  });

  it('takes the whole width where the train is long, its reasons under it', async () => {
    const { page } = await open(linkTo(ourText('albatross-ten-speed')));
    await page.locator('.diagram-long').waitFor();
    expect(await topOf(page, '.why')).toBeGreaterThan(await topOf(page, '.figure-caption'));
  });
});

describe('warnings', () => {
  it('stand on the drawing where they belong, and in words under it', async () => {
    const odd = ourText('kestrel-three-speed').replace('planets: 3', 'planets: 7');
    const { page } = await open(linkTo(odd));
    const told = page.locator('.warnings li');
    await expect
      .poll(() => told.allTextContents())
      .toContainEqual(expect.stringContaining('planets'));
    await expect
      .poll(() => page.locator('.warned[data-name="front"] .warning-sign').count())
      .toBe(1);
    await button(page, 'Describe it').click();
    await expect.poll(() => page.locator('.warned[data-name="front"]').count()).toBe(1);
    expect(await accessFaults(page)).toEqual([]);
    // Where a class is asked, nothing tells.
    await button(page, 'Ask the class').click();
    await page.locator('.lesson-question').waitFor();
    expect(await page.locator('.warned, .warnings').count()).toBe(0);
  });
});

describe('two builds', () => {
  it('are numbered, the wrong one by its fault in the language of the reader', async () => {
    const { page } = await open('', { locale: 'es-MX' });
    await page.getByLabel('Comparar con una avería').selectOption('low sprag: backwards');
    await expect.poll(() => caption(page, 0)).toMatch(/^Fig\. 1\. Como debe ser\. /u);
    expect(await caption(page, 1)).toMatch(/^Fig\. 2\. rueda libre de corta: al revés\. /u);
    const titles = page.locator('.diagram svg');
    expect(await titles.nth(1).getAttribute('aria-label')).toContain(
      'rueda libre de corta: al revés',
    );
    await button(page, 'Ver por dentro: rueda libre de corta').first().waitFor();
    await page.getByText('Todas las combinaciones').first().click();
    await button(page, 'embrague de avance + freno de corta').first().waitFor();
    expect(await accessFaults(page)).toEqual([]);
  });
});

describe('a reason without torques', () => {
  it.each([
    ['on a hill', 'rolls back', 'rolls on a hill'],
    ['under power', 'second race is free', 'no torque to balance'],
  ])('says why there are none: %s', async (side, reason, says) => {
    const { page } = await open();
    await button(page, 'N').first().click();
    if (side === 'under power') await button(page, '1').first().click();
    await button(page, side).first().click();
    await page.locator('.why summary', { hasText: reason }).click();
    await expect.poll(() => page.locator('.why [open]').textContent()).toContain(says);
  });
});

describe('for every reader', () => {
  it.each(['es-MX', 'en-GB'])('a menu opens inside the window of a phone: %s', async (locale) => {
    const { page } = await open('', { ...PHONE, locale });
    for (let k = 0; k < 2; k++) {
      await page.locator('.menu summary').nth(k).click();
      const box = await page.locator('.menu[open] .menu-list').boundingBox();
      expect(box?.x).toBeGreaterThanOrEqual(0);
      expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(PHONE.viewport.width);
      await page.keyboard.press('Escape');
    }
  });

  it('nothing moves by itself where little motion is asked for', async () => {
    const { page } = await open('', { reducedMotion: 'reduce' });
    await expect.poll(() => button(page, 'Run').count()).toBe(1);
    const face = page.locator('.dial-face').first();
    const before = await face.getAttribute('transform');
    await page.waitForTimeout(300);
    expect(await face.getAttribute('transform')).toBe(before);
  });

  it('a lit reason is told apart in forced colours', async () => {
    const { page } = await open('', { forcedColors: 'active' });
    await page.locator('.why summary').nth(1).hover();
    const rule = (what: string) =>
      page
        .locator(what)
        .first()
        .evaluate((item) => getComputedStyle(item).borderInlineStartColor);
    await page.locator('.why-lit').first().waitFor();
    expect(await rule('.why li.why-lit')).not.toBe(await rule('.why li:not(.why-lit)'));
  });

  it('a print has the name and the figures, and no controls', async () => {
    const { page } = await open();
    await page.locator('.chart').waitFor();
    await page.emulateMedia({ media: 'print' });
    for (const there of ['h1', '.diagram svg', '.why', '.chart table']) {
      expect(await page.locator(there).first().isVisible(), there).toBe(true);
    }
    for (const gone of ['.head-rooms', '.desk', '.menu', '.gears', '.figure-tools button']) {
      expect(await page.locator(gone).first().isVisible(), gone).toBe(false);
    }
  });

  it('one thing has one word in Spanish, as the engine says it', () => {
    const web = path.join(ROOT, 'src/page');
    const tables = readdirSync(web, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('words.ts'))
      .map((name) => readFileSync(path.join(web, name), 'utf8'));
    // Horario, retener, carcasa, satélites, elementos, en tracción.
    const others = /a derechas|a izquierdas|sujet|\bcajas?\b|\bplanetas\b|dispositivo|con motor/u;
    expect(tables.length).toBeGreaterThan(8);
    for (const table of tables) expect(others.exec(table)?.[0]).toBe(undefined);
  });
});

describe('a question for the class', () => {
  it('is asked at once, and keeps its votes while the others come', async () => {
    const { page } = await open(linkTo(ourText('albatross-ten-speed')));
    await expect.poll(() => page.locator('h1').textContent()).toContain('Albatross');
    await button(page, 'Ask the class').click();
    await page.locator('.lesson-choice').first().click();
    const place = page.getByText(/^Question 1 of \d+$/u);
    const { length: all } = questionsOf(ours('albatross-ten-speed'), { seed: 1 });
    await expect.poll(async () => Number((await place.textContent())?.split(' ').at(-1))).toBe(all);
    expect(await page.locator('.lesson-choice output').first().textContent()).toBe('1');
  });
});
