import { expect, it } from 'vitest';
import { withBrowser } from './browser.ts';
import { linkTo } from './links.ts';
import { LONG_NAMED, PHONE, tooWide } from './phone.ts';

const open = withBrowser();

it('turning and finding a fault are no wider than a phone, whatever is open', async () => {
  const { page } = await open(linkTo(LONG_NAMED), { ...PHONE, locale: 'es-ES' });
  expect(await tooWide(page, [1, 2])).toEqual([]);
});
