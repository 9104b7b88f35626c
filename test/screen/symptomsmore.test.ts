import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const text = ourText('kestrel-three-speed');

it('an answer is sure or not, a shop’s file is used and told, a check is put together', async () => {
  const { page } = await open(linkTo(text), { hasTouch: true });
  const button = (name: string | RegExp) =>
    page.getByRole('button', { name, exact: typeof name === 'string' }).first();
  await button('Find a fault').tap();
  await button('Skip').tap();
  await page.locator('#test-asked').waitFor();
  await button('Not sure').tap();
  expect(await page.locator('.symptoms-told li').count()).toBe(0);
  await page.locator('.symptoms-answer', { hasText: 'burnt' }).tap();
  await expect.poll(() => page.locator('.symptoms-told').textContent()).toContain('not sure');
  const choose = async (body: string) => {
    const chooser = page.waitForEvent('filechooser');
    await button('Choose the shop’s file').tap();
    await (
      await chooser
    ).setFiles({ name: 'ours.yaml', mimeType: 'text/yaml', buffer: Buffer.from(body) });
  };
  await page.evaluate('delete window.showOpenFilePicker');
  await choose('tests: {}\n');
  await expect.poll(() => page.locator('.symptoms-shop [role=alert]').count()).toBe(1);
  await choose(readFileSync('experience.yaml', 'utf8'));
  await expect.poll(() => page.locator('.symptoms-shop').textContent()).toContain('ours.yaml');
  await button('Another test').tap();
  await button('By hand: hold and turn').tap();
  await button(/^rear carrier/u).tap();
  await button(/^rear carrier/u).tap();
  await button(/^Does it turn\?/u).tap();
  await expect.poll(() => page.locator('#test-asked').textContent()).toContain('rear carrier');
  expect(await page.locator('.symptoms-answer').count()).toBe(2);
  expect(await accessFaults(page)).toEqual([]);
}, 90_000);
