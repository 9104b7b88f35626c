import { expect, it } from 'vitest';
import { withBrowser } from '../browser.ts';
import { linkTo } from '../links.ts';
import { LONG_NAMED, PHONE, tooWide } from '../phone.ts';

const open = withBrowser();

it.each(['en-GB', 'es-ES'])(
  'no room is wider than a phone, whatever is open: %s',
  async (locale) => {
    const { page, complaints } = await open(linkTo(LONG_NAMED), { ...PHONE, locale });
    const places = Array.from({ length: await page.locator('nav button').count() }, (_, k) => k);
    expect(places.length).toBeGreaterThan(8);
    expect(await tooWide(page, places)).toEqual([]);
    expect(complaints).toEqual([]);
  },
);
