import { readdirSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { questionsOf } from '../../src/shop/lessons/index.ts';
import { ROOT } from '../sources.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const TABLET = { viewport: { width: 820, height: 1180 }, hasTouch: true };

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const topOf = (page: Page) => page.locator('.diagram svg').first().boundingBox();

// The words of what can be pressed and is in sight, without scrolling.
const inSight = (page: Page) =>
  page.locator('button, summary, a').evaluateAll((all) =>
    all.flatMap((one) => {
      const { top, bottom, left, right } = one.getBoundingClientRect();
      const seen = bottom > 0 && right > 0 && top < innerHeight && left < innerWidth;
      return seen && (one as HTMLElement).checkVisibility() ? [(one as HTMLElement).innerText] : [];
    }),
  );

// Presses what is in sight and speaks of it, once the bar of the rooms is drawn along as far as it
// goes, which shows that there is more; fails where nothing does.
async function find(page: Page, word: RegExp): Promise<void> {
  for (let drawn = 0; drawn < 5; drawn++) {
    const told = (await inSight(page)).find((text) => word.test(text));
    const first = told?.split('\n')[0];
    if (first !== undefined) {
      return page.locator('button, summary').filter({ hasText: first }).first().click();
    }
    await page.locator('.head-rooms').evaluate((bar) => bar.scrollBy(bar.clientWidth * 0.7, 0));
    await page.waitForTimeout(100);
  }
  throw new Error(`nothing in sight says ${word}`);
}

describe('where the page begins', () => {
  it('is for who has never seen it, and not for who has, or follows a link', async () => {
    const first = await open('', { isFirst: true });
    await first.page.locator('.begin').waitFor();
    await button(first.page, 'Turn it').click();
    const again = await first.page.context().newPage();
    await again.goto(first.address);
    await again.locator('.why li').first().waitFor();
    expect(await again.locator('.begin').count()).toBe(0);
    const linked = await open(linkTo(ourText('wren-plain-set')), { isFirst: true });
    expect(await linked.page.locator('.begin').count()).toBe(0);
  });

  it.each([
    ['a phone', PHONE],
    ['a tablet', TABLET],
    ['a desk', { viewport: { width: 1280, height: 720 } }],
  ])('asks on %s for the dial of the input, and it turns', async (_, size) => {
    const { page, complaints } = await open('', { ...size, isFirst: true });
    const asks = page.locator('.begin-asks .dial-rim');
    expect(await page.locator('.begin-hint').innerText()).toContain('turbine shaft');
    const box = await asks.boundingBox();
    if (!box) throw new Error('no dial asks');
    // In sight without scrolling.
    expect(box.y + box.height).toBeLessThan(size.viewport.height);
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x + box.width / 3, y);
    await page.mouse.down();
    await page.mouse.move(x, y + box.height / 3, { steps: 6 });
    await page.mouse.up();
    await expect.poll(() => page.locator('.begin-hint').innerText()).toContain('in your hand');
    expect(await page.locator('.begin-hint').innerText()).toContain('so it stays loose');
    expect(await asks.count()).toBe(0);
    expect(complaints).toEqual([]);
  });

  it('offers every room and every train of ours, the simplest first, with what each is about', async () => {
    const { page } = await open('', { isFirst: true });
    const rooms = await page.locator('.head-rooms button').allTextContents();
    const offered = await page.locator('.begin-rooms b').allTextContents();
    expect(['Begin', ...offered]).toEqual(rooms);
    const ours = readdirSync(path.join(ROOT, 'trains')).filter((file) => file.endsWith('.yaml'));
    const trains = ours.filter((file) => file.endsWith('.train.yaml'));
    const names = await page.locator('.begin-list b').allTextContents();
    expect(names.length).toBe(trains.length);
    const list = page.locator('.begin-list li');
    const sizes = (await list.locator('.aside').allTextContents()).map((text) =>
      parseInt(text, 10),
    );
    expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));
    const wren = list.filter({ hasText: 'Wren' });
    await wren.locator('summary').click();
    await expect.poll(() => wren.locator('p').innerText()).toContain('no reaction');
    expect(await accessFaults(page)).toEqual([]);
    await wren.locator('button').click();
    await expect.poll(() => page.locator('h1').textContent()).toContain('Wren');
    await page.locator('.begin-about summary').click();
    expect(await page.locator('.begin-about p').innerText()).toContain('no reaction');
  });

  it('is read in Spanish too', async () => {
    const { page } = await open('', { isFirst: true, locale: 'es-MX' });
    const wren = page.locator('.begin-list li').filter({ hasText: 'Wren' });
    await expect.poll(() => wren.locator('.begin-does').innerText()).toContain('Un juego sencillo');
  });

  it('opens a train in the first gear that drives', async () => {
    // What its oil does would have to tell of P too; and names in Spanish are of that oil's parts.
    const text = ourText('kestrel-three-speed')
      .replaceAll(/^(?:controls|languages):.*\n(?:(?:[ #].*)?\n)*/gmu, '')
      .replace(/^ranges:\n/mu, 'ranges:\n  P: { P: [] }\n');
    expect(text).toContain('P: { P: [] }');
    const { page } = await open(linkTo(text));
    await expect
      .poll(() => page.locator('.figure-caption').first().textContent())
      .toMatch(/D 1.*: 17\/7/u);
  });
});

describe("a stranger's minute, by what is in sight alone", () => {
  it.each([
    ['a desk', { viewport: { width: 1280, height: 800 } }],
    ['a tablet', TABLET],
    ['a phone', PHONE],
  ])('on %s: turns the train, finds a fault, prints a chart', async (_, size) => {
    const { page } = await open('', { ...size, isFirst: true });
    await find(page, /turn it/iu);
    await page.locator('.why li').first().waitFor();
    await find(page, /find a fault/iu);
    await page.locator('.symptoms').first().waitFor();
    await find(page, /^print/iu);
    await find(page, /chart/iu);
    await page.locator('.print-paper').waitFor();
    await page.evaluate('globalThis.print = () => (globalThis.printed = true)');
    await expect.poll(async () => (await inSight(page)).join()).toContain('save as PDF');
    await find(page, /save as pdf/iu);
    expect(await page.evaluate('globalThis.printed')).toBe(true);
  });
});

describe('in every size', () => {
  it('the whole train fits a phone, and is larger on asking', async () => {
    const { page } = await open(linkTo(ourText('albatross-ten-speed')), PHONE);
    const over = () =>
      page
        .locator('.diagram')
        .first()
        .evaluate((its) => its.scrollWidth - its.clientWidth);
    expect(await over()).toBeLessThanOrEqual(0);
    await button(page, 'Larger').click();
    expect(await over()).toBeGreaterThan(100);
  });

  it.each([
    [1280, 720],
    [1920, 1080],
  ])('a question and the train fit one screen: %i by %i', async (width, height) => {
    const { page } = await open('', { viewport: { width, height } });
    await button(page, 'Ask the class').click();
    await page.locator('.lesson-choice').first().waitFor();
    for (const what of ['.lesson-question', '.lesson-hidden svg']) {
      const box = await page.locator(what).boundingBox();
      expect((box?.y ?? 0) + (box?.height ?? 1e9), what).toBeLessThanOrEqual(height);
    }
    await button(page, 'Full screen').first().click();
    const full = 'document.fullscreenElement?.querySelectorAll(".lesson-choice, svg").length';
    await expect.poll(() => page.evaluate(full)).toBeGreaterThan(2);
  });

  it('the wheels of an end view have their names where it fills the screen', async () => {
    const { page } = await open();
    const figure = page.locator('.ends figure').first();
    const before = await figure.locator('svg text').count();
    await figure.getByRole('button', { name: 'Full screen' }).click();
    await expect.poll(() => figure.locator('svg text').count()).toBeGreaterThan(before);
  });
});

describe('the page under a hand', () => {
  it('does not jump as a drag begins, and says the way back', async () => {
    const { page } = await open();
    const before = await topOf(page);
    await page.locator('.handle[data-name="turbine shaft"] .dial').press('ArrowRight');
    await expect
      .poll(() => page.locator('.figure-caption').first().textContent())
      .toContain('hands off');
    expect((await topOf(page))?.y).toBe(before?.y);
    await button(page, 'hands off').click();
    await expect
      .poll(() => page.locator('.figure-caption').first().textContent())
      .toContain('17/7');
  });

  it('shows what holds by hand and rolled back', async () => {
    const { page } = await open();
    const mark = page.locator('.diagram svg .device.carrying[data-name="low sprag"]');
    await button(page, 'on a hill, input held').click();
    await expect
      .poll(() => page.locator('.diagram svg .device.carrying').count())
      .toBeGreaterThan(0);
    await button(page, 'under power').first().click();
    await page.locator('.handle[data-name="rear.carrier"] .dial').press('ArrowLeft');
    await expect.poll(() => mark.count()).toBe(1);
  });

  it('turns a train by a wheel of an end view too', async () => {
    const { page } = await open();
    const figure = page.locator('.ends figure').first();
    await figure.scrollIntoViewIfNeeded();
    const box = await figure.locator('svg').boundingBox();
    if (!box) throw new Error('no end view');
    const [x, y, r] = [box.x + box.width / 2, box.y + box.width / 2, box.width * 0.465];
    await page.mouse.move(x + r, y);
    await page.mouse.down();
    await page.mouse.move(x + r * Math.cos(0.5), y + r * Math.sin(0.5), { steps: 6 });
    await page.mouse.up();
    await expect
      .poll(() => page.locator('.figure-caption').first().textContent())
      .toContain('By hand: front ring');
    const face = page.locator('.handle[data-name="front.ring"] .dial-face');
    const turned = Number(/-?[\d.]+/u.exec((await face.getAttribute('transform')) ?? '')?.[0]);
    expect(Number.isFinite(turned)).toBe(true);
  });

  it('asks for no frame where nothing moves by itself', async () => {
    const { page } = await open();
    const frames = async () => {
      await page.evaluate(`(() => {
        globalThis.asked = 0;
        const ask = globalThis.requestAnimationFrame.bind(globalThis);
        globalThis.requestAnimationFrame = (then) => { globalThis.asked++; return ask(then); };
      })()`);
      await page.waitForTimeout(400);
      return page.evaluate<number>('globalThis.asked');
    };
    expect(await frames()).toBeGreaterThan(2);
    await page.locator('.handle[data-name="turbine shaft"] .dial').press('ArrowRight');
    await page.waitForTimeout(200);
    expect(await frames()).toBe(0);
    await button(page, 'hands off').click();
    await button(page, 'Ask the class').click();
    await page.locator('.lesson-hidden').waitFor();
    await page.waitForTimeout(1000);
    expect(await frames()).toBe(0);
  });

  it('is a key away from the picture, and a row of buttons is one stop', async () => {
    const { page } = await open();
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Go to the picture');
    await page.keyboard.press('Enter');
    expect(await page.evaluate('document.activeElement.matches(".dial")')).toBe(true);
    await page.keyboard.press('Shift+Tab');
    const row = page.locator('.page-thumb .gears button:not([tabindex="-1"])');
    expect(await row.count()).toBe(1);
    await row.focus();
    await page.keyboard.press('ArrowRight');
    expect(await page.evaluate('document.activeElement.textContent')).toBe('2');
    expect(await row.textContent()).toBe('2');
  });
});

describe('a one-way clutch that is tapped', () => {
  it('shows its sprags standing and lying, both moving, and which it is now', async () => {
    const { page } = await open();
    const sprag = page.locator('.diagram .device[data-name="low sprag"] .one-way');
    await sprag.press('Enter');
    const now = page.locator('.races-now figcaption');
    await expect.poll(() => now.textContent()).toBe('Holds (now)');
    expect(await page.locator('.races svg').count()).toBe(2);
    const below = async () => {
      const box = await page.locator('.races-now').boundingBox();
      return (box?.y ?? 0) + (box?.height ?? 0) - (page.viewportSize()?.height ?? 0);
    };
    await expect.poll(below).toBeLessThanOrEqual(0);
    const inner = page.locator('.races-one:not(.races-hold) .races-inner');
    const before = await inner.getAttribute('transform');
    await expect.poll(() => inner.getAttribute('transform')).not.toBe(before);
    await page.locator('.gears').getByRole('button', { name: '2', exact: true }).first().click();
    await expect.poll(() => now.textContent()).toBe('Over-runs (now)');
    expect(await accessFaults(page)).toEqual([]);
    await button(page, 'Close').click();
    expect(await page.locator('.races').count()).toBe(0);
  });
});

describe('a wrong build', () => {
  it('is flipped in place where there is no room for two, its part ringed', async () => {
    const { page } = await open('', TABLET);
    await page.getByLabel('Compare with a fault').selectOption('low sprag: backwards');
    const [right, wrong] = [page.locator('.builds-right'), page.locator('.builds-wrong')];
    await wrong.waitFor();
    expect(await right.isVisible()).toBe(false);
    expect(await wrong.locator('.ring-wrong').count()).toBe(1);
    const { y } = (await wrong.locator('svg').first().boundingBox()) ?? {};
    await button(page, 'As it should be').click();
    expect(await wrong.isVisible()).toBe(false);
    expect((await right.locator('svg').first().boundingBox())?.y).toBe(y);
  });

  it('is chosen in full screen without leaving it', async () => {
    const { page } = await open();
    await button(page, 'Full screen').first().click();
    await expect.poll(() => page.evaluate('document.fullscreenElement !== null')).toBe(true);
    await page.locator('.builds-right select').first().selectOption('low sprag: backwards');
    await page.locator('.builds-wrong').waitFor();
    expect(await page.evaluate('document.fullscreenElement !== null')).toBe(true);
  });

  it('goes when its question is left', async () => {
    const { page } = await open();
    await button(page, 'Ask the class').click();
    const train = readTrain(ourText('kestrel-three-speed')).train as Train;
    const asked = questionsOf(train, { seed: 1 });
    const place = asked.findIndex(({ setting }) => setting.fault && setting.end === 'drive');
    await expect
      .poll(() => page.getByText(/^Question 1 of \d+$/u).textContent())
      .toContain(` of ${asked.length}`);
    for (let k = 0; k < place; k++) await button(page, 'Next question').click();
    await button(page, 'Reveal').click();
    await page.locator('.builds-wrong').waitFor();
    await button(page, 'Turn it').click();
    await page.locator('.why li').first().waitFor();
    expect(await page.locator('.builds-wrong').count()).toBe(0);
  });
});

describe('without a reload', () => {
  it('the page that was visited first is kept for want of a network', async () => {
    const { page } = await open('', { serviceWorkers: 'allow' });
    const controls = 'navigator.serviceWorker.controller !== null';
    await expect.poll(() => page.evaluate(controls), { timeout: 15_000 }).toBe(true);
  });
});
