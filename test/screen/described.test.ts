import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { hand } from '../../src/engine/hand/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { sentences } from '../../src/telling/narrative/index.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';

const open = withBrowser();

// The set on a stand that the README shows.
const STAND = `holdturn: 1
name: One set on a stand
input: crank
output: flange
sets:
  set: { sun: 30, ring: 66, planets: 3 }     # counted twice
joined: { crank: [set.sun], flange: [set.carrier] }
devices:
  ring band:  { band: set.ring }
  ring sprag: { one-way: [set.ring, case], lets: clockwise }
ranges:
  L: { "1": [ring band] }
`;

it('from an empty page to a described train, its gears, a hand check, a fault, and a file', async () => {
  const { page, complaints } = await open();
  const button = (name: string) => page.getByRole('button', { name, exact: true });
  await page.getByText('File', { exact: true }).click();
  await button('New, from nothing').click();
  await button('As text').click();
  await page.locator('.cm-content').click();
  // All at once, as from a clipboard: the editor would complete and indent what is typed.
  await page.keyboard.insertText(STAND);
  await expect.poll(() => page.locator('h1').textContent()).toBe('One set on a stand');
  expect(await page.locator('.diagram .handle').count()).toBe(3);

  // Its gears: 1 + 66/30.
  await button('Turn it').click();
  await button('1').first().click();
  await expect
    .poll(() => page.locator('.figure-caption').first().textContent())
    .toContain('16/5 = 3.2');
  expect(await accessFaults(page)).toEqual([]);

  // A hand check: the carrier is held, the ring turned the way in which the sprag holds it.
  const dial = (member: string) => page.locator(`.handle[data-name="${member}"] .dial`);
  await button('ring band').click();
  await dial('flange').press('Enter');
  await dial('set.ring').press('ArrowLeft');
  const train = readTrain(STAND).train as Train;
  const check = { hold: ['flange'], turn: 'set.ring', way: 'anticlockwise', on: [] } as const;
  const found = hand(train, check);
  expect(found.turns).toBe(false);
  const reasons = page.locator('.why summary');
  await expect.poll(() => reasons.allTextContents()).toEqual(sentences(found.facts));

  // The sprag the wrong way round, beside it: there the ring turns.
  await page.getByLabel('Compare with a fault').selectOption('ring sprag: backwards');
  await expect.poll(() => page.locator('.why').count()).toBe(2);
  const wrong = await page.locator('.why').nth(1).locator('summary').allTextContents();
  expect(wrong[0]).not.toBe(sentences(found.facts)[0]);

  // Saved, and opened again: the same text, its comment too.
  await page.evaluate(() => {
    for (const name of ['showSaveFilePicker', 'showOpenFilePicker']) {
      delete (window as unknown as Record<string, unknown>)[name];
    }
  });
  const [download] = await Promise.all([page.waitForEvent('download'), button('Save').click()]);
  const saved = readFileSync(await download.path(), 'utf8');
  expect(saved).toBe(STAND);
  await page.getByText('File', { exact: true }).click();
  await button('kestrel three speed').click();
  await expect.poll(() => page.locator('h1').textContent()).toBe('Kestrel three-speed');
  await page.getByText('File', { exact: true }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByText('Open…').click(),
  ]);
  await chooser.setFiles({
    name: 'stand.train.yaml',
    mimeType: 'application/yaml',
    buffer: Buffer.from(saved),
  });
  await expect.poll(() => page.locator('h1').textContent()).toBe('One set on a stand');
  expect(complaints).toEqual([]);
});
