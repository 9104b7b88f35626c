import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';

const open = withBrowser();

const node = (page: Page, member: string) =>
  page.locator(`.lever-node[data-name="${member}"]`).first();

async function figures(page: Page): Promise<Record<string, string>> {
  const nodes = page.locator('.lever-node');
  const told: Record<string, string> = {};
  for (let k = 0; k < (await nodes.count()); k++) {
    const name = (await nodes.nth(k).getAttribute('data-name')) ?? '';
    told[name] = (await nodes.nth(k).locator('text').textContent()) ?? '';
  }
  return told;
}

describe('the lever diagram', () => {
  it('has its nodes at the speeds of the gear', async () => {
    const { page } = await open();
    await node(page, 'sun shell').scrollIntoViewIfNeeded();
    // First gear of the Kestrel: 7/17 at the output, -49/51 at the sun shell.
    expect(await figures(page)).toMatchObject({
      'turbine shaft': '1.00',
      'main shaft': '0.41',
      'sun shell': '−0.96',
      'rear.carrier': '0.00',
    });
    expect(await accessFaults(page)).toEqual([]);
  });

  it('pulls a node, the others follow, and a one-way clutch is a stop on its side', async () => {
    const { page } = await open();
    const carrier = node(page, 'rear.carrier');
    await carrier.scrollIntoViewIfNeeded();
    const box = await carrier.locator('.lever-dot').boundingBox();
    if (!box) throw new Error('no node');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y - 30, { steps: 4 });
    await page.mouse.move(x, y - 60, { steps: 4 });
    // Lifted off the sprag, the carrier turns clockwise and the shell runs back less.
    const lifted = await figures(page);
    expect(Number(lifted['rear.carrier'])).toBeGreaterThan(0.1);
    expect(lifted['turbine shaft']).toBe('1.00');
    await page.mouse.move(x, y + 60, { steps: 6 });
    expect((await figures(page))['rear.carrier']).toBe('0.00');
    await expect.poll(() => page.locator('.lever-said').textContent()).toContain('low sprag');
    await page.mouse.up();
  });
});
