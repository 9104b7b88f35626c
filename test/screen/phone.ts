import type { Page } from 'playwright-core';
import { ourText } from './links.ts';

/** How a phone sees the page; `isMobile` would hide what is too wide, by growing the page. */
export const PHONE = { viewport: { width: 390, height: 844 } };

/** A train of ours with a name as a person may type it, with nowhere to break. */
export const LONG_NAMED = ourText('kestrel-three-speed').replaceAll(
  'second brake',
  'secondandintermediatebrakeofthefrontset',
);

/** What stands out of the page in each of these rooms, by their places in the head, whatever is open. */
export async function tooWide(page: Page, places: readonly number[]): Promise<string[]> {
  const wide: string[] = [];
  const rooms = page.locator('nav button');
  for (const place of places) {
    // oxlint-disable-next-line no-await-in-loop
    await rooms.nth(place).click();
    // oxlint-disable-next-line no-await-in-loop
    wide.push(...(await opened(page)));
  }
  return wide;
}

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
  }, PHONE.viewport.width);
}
