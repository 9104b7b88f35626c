import { describe, expect, it } from 'vitest';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();

describe('without a network', () => {
  it('the page opens again after its first visit, and reads files', async () => {
    const { page, address } = await open('', { serviceWorkers: 'allow' });
    const ready = 'navigator.serviceWorker.ready.then(({ active }) => active?.state)';
    await expect.poll(() => page.evaluate(ready), { timeout: 15_000 }).toBe('activated');
    await page.context().setOffline(true);
    await page.goto(`${address}${linkTo(ourText('wren-plain-set'))}`);
    await page.reload();
    await expect.poll(() => page.locator('h1').textContent()).toContain('Wren');
    await page.getByRole('button', { name: 'Ask the class' }).click();
    await expect.poll(() => page.locator('.lesson-choice').count()).toBeGreaterThan(1);
  });

  it('says by what name and look it is installed', async () => {
    const { page, address } = await open();
    const response = await page.request.get(`${address}manifest.webmanifest`);
    expect(await response.json()).toMatchObject({ name: 'Holdturn', display: 'standalone' });
    expect(await page.locator('link[rel="manifest"]').count()).toBe(1);
  });
});
