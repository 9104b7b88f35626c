import { describe, expect, it } from 'vitest';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const SIZES = [
  { width: 360, height: 740 },
  { width: 820, height: 1180 },
  { width: 1400, height: 900 },
  { width: 1920, height: 1080 },
];

describe('the sheet', () => {
  it.each(SIZES)('is accessible and no wider than the window at $width px', async (viewport) => {
    const { page, complaints } = await open('', { viewport });
    expect(await accessFaults(page)).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
  });

  it('is accessible in the dark, and in Spanish', async () => {
    const { page } = await open('', { colorScheme: 'dark', locale: 'es-MX' });
    expect(await page.locator('html').getAttribute('lang')).toBe('es');
    expect(await accessFaults(page)).toEqual([]);
  });

  it('lets no name of a file run anything', async () => {
    const kestrel = ourText('kestrel-three-speed');
    const evil = '"<img src=x onerror=alert(1)><script>alert(2)</script>"';
    const text = kestrel.replace(/^name: .*$/mu, `name: ${evil}`);
    const { page, complaints } = await open(linkTo(text));
    let alerts = 0;
    page.on('dialog', () => (alerts += 1));
    await expect.poll(() => page.locator('h1').textContent()).toContain('<img src=x');
    expect(await page.locator('img, h1 script').count()).toBe(0);
    expect(alerts).toBe(0);
    expect(complaints).toEqual([]);
  });
});
