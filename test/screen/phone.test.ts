import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const WIDTH = 390;

// A name as a person may type it, with nowhere to break.
const KESTREL = ourText('kestrel-three-speed').replaceAll(
  'second brake',
  'secondandintermediatebrakeofthefrontset',
);

it.each(['en-GB', 'es-ES'])(
  'no room is wider than a phone, whatever is open, in %s',
  async (locale) => {
    const visit = { viewport: { width: WIDTH, height: 844 }, locale };
    const { page, complaints } = await open(linkTo(KESTREL), visit);
    const rooms = page.locator('nav button');
    const wide: Record<string, string[]> = {};
    const count = await rooms.count();
    expect(count).toBeGreaterThan(8);
    for (let k = 0; k < count; k++) {
      // oxlint-disable-next-line no-await-in-loop
      await rooms.nth(k).click();
      // oxlint-disable-next-line no-await-in-loop
      wide[(await rooms.nth(k).textContent()) ?? ''] = await opened(page);
    }
    expect(Object.values(wide).flat(), JSON.stringify(wide)).toEqual([]);
    expect(complaints).toEqual([]);
  },
);

// Opens every fold, and those inside it; what then stands out of the page, where it is wider than the phone.
async function opened(page: Page): Promise<string[]> {
  for (let depth = 0; depth < 3; depth++) {
    // oxlint-disable-next-line no-await-in-loop
    await page.evaluate(async () => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
      await new Promise((done) => setTimeout(done, 400));
    });
  }
  return page.evaluate((width) => {
    if (document.documentElement.scrollWidth <= width) return [];
    return [...document.querySelectorAll('body *')]
      .filter((its) => its.getBoundingClientRect().right > width + 1 && its.children.length === 0)
      .map((its) => `${its.tagName}.${its.className} ${its.textContent}`.slice(0, 80))
      .slice(0, 12);
  }, WIDTH);
}
