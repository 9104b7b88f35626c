import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { hand } from '../../src/engine/hand/index.ts';
import { toNumber } from '../../src/engine/linear/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { sentences } from '../../src/telling/narrative/index.ts';
import { withBrowser } from './browser.ts';
import { ourText } from './links.ts';

const open = withBrowser();
const KESTREL = readTrain(ourText('kestrel-three-speed')).train as Train;

const dial = (page: Page, member: string) => page.locator(`.handle[data-name="${member}"] .dial`);
const reasons = (page: Page) => page.locator('.why summary').allTextContents();

// Round the middle of a dial, in degrees; the screen sees each step of a degree.
async function drag(page: Page, of: Locator, degrees: number): Promise<void> {
  const { x, y, width, height } = (await of.locator('.dial-rim').boundingBox()) as Box;
  const at = (angle: number): [number, number] => [
    x + width / 2 + (width / 3) * Math.cos((angle * Math.PI) / 180),
    y + height / 2 + (width / 3) * Math.sin((angle * Math.PI) / 180),
  ];
  await page.mouse.move(...at(0));
  await page.mouse.down();
  const steps = 12;
  for (let k = 1; k <= steps; k++) await page.mouse.move(...at((degrees * k) / steps));
  await page.mouse.up();
}

type Box = { x: number; y: number; width: number; height: number };

async function angleOf(page: Page, member: string): Promise<number> {
  const transform = await dial(page, member).locator('.dial-face').getAttribute('transform');
  return Number(/-?[\d.]+/u.exec(transform ?? '')?.[0]);
}

describe('hands on the diagram', () => {
  it('turn a member by dragging its dial, and the others follow as the engine says', async () => {
    const { page } = await open();
    await page.getByRole('button', { name: 'Reset marks' }).click();
    await dial(page, 'sun shell').press('Enter');
    await page.getByRole('button', { name: 'Reset marks' }).click();
    await drag(page, dial(page, 'turbine shaft'), 60);
    const found = hand(KESTREL, {
      hold: ['sun shell'],
      turn: 'turbine shaft',
      way: 'clockwise',
      on: ['forward clutch'],
    });
    expect(await reasons(page)).toEqual(sentences(found.facts));
    const turned = await angleOf(page, 'turbine shaft');
    expect(turned).toBeGreaterThan(50);
    const shaft = found.turns ? found.drawn.get('main shaft') : undefined;
    const speed = toNumber(shaft ?? { num: 0, den: 1 });
    expect(await angleOf(page, 'main shaft')).toBeCloseTo(turned * speed, 0);
    expect(await angleOf(page, 'sun shell')).toBe(0);
  });

  it('find that it locks, and the path to the case lights', async () => {
    const { page } = await open();
    await page.getByRole('button', { name: 'R', exact: true }).first().click();
    await page.getByRole('button', { name: 'forward clutch', exact: true }).click();
    await dial(page, 'turbine shaft').press('ArrowRight');
    const on = ['direct clutch', 'low brake', 'forward clutch'];
    const found = hand(KESTREL, { hold: [], turn: 'turbine shaft', way: 'clockwise', on });
    expect(found.turns).toBe(false);
    expect(await reasons(page)).toEqual(sentences(found.facts));
    expect(await page.locator('.diagram-locks .load').count()).toBeGreaterThan(0);
  });

  it('do the same by keys: the arrows turn, Enter holds and releases', async () => {
    const { page } = await open();
    const pressed = () => dial(page, 'sun shell').getAttribute('aria-pressed');
    await dial(page, 'sun shell').press('Enter');
    await expect.poll(pressed).toBe('true');
    await dial(page, 'turbine shaft').press('ArrowLeft');
    const check = { hold: ['sun shell'], turn: 'turbine shaft', on: ['forward clutch'] };
    const found = hand(KESTREL, { ...check, way: 'anticlockwise' });
    expect(await reasons(page)).toEqual(sentences(found.facts));
    await dial(page, 'sun shell').press('Enter');
    await expect.poll(pressed).toBe('false');
  });

  it('apply a device by touching it', async () => {
    const { page } = await open();
    await page.locator('.device[data-name="direct clutch"] .name').first().click();
    await expect.poll(() => page.locator('.figure-caption').first().textContent()).toMatch(/: 1$/u);
  });

  it('turn a right and a wrong build together', async () => {
    const { page } = await open();
    await page.getByLabel('Compare with a fault').selectOption('low sprag: backwards');
    const captions = page.locator('.figure-caption');
    await expect.poll(() => captions.nth(1).textContent()).toMatch(/^Fig\. 2\..*neutral/u);
    expect(await captions.nth(0).textContent()).toContain('2.429');
    const faces = page.locator('.handle[data-name="turbine shaft"] .dial-face');
    await page.getByRole('button', { name: 'Pause', exact: true }).click();
    // In one go: between two questions a frame may pass.
    const [right, wrong] = await faces.evaluateAll((all) => {
      return all.map((face) => face.getAttribute('transform'));
    });
    expect(right).toBe(wrong);
    expect(right).not.toBe('rotate(0.00)');
  });
});

describe('pointing', () => {
  it('at a sentence lights what it speaks of, and at a part its sentence', async () => {
    const { page } = await open();
    await page.locator('.why summary', { hasText: 'low sprag' }).first().hover();
    await expect.poll(() => page.locator('.diagram-lit[data-name="low sprag"]').count()).toBe(1);
    await page.locator('.device[data-name="forward clutch"] .name').first().hover();
    await expect
      .poll(() => page.locator('.why-lit').allTextContents())
      .toEqual([expect.stringContaining('forward clutch carries')]);
  });

  it('a sentence opens to its proof, whose numbers balance', async () => {
    const { page } = await open();
    await page.locator('.why summary', { hasText: 'low sprag' }).first().click();
    const rows = await page.locator('.why [open] table tr').allTextContents();
    expect(rows.some((row) => row.includes('low sprag') && row.includes('10/7'))).toBe(true);
    expect(rows.some((row) => row.includes('rear gears') && row.includes('−10/7'))).toBe(true);
  });
});
