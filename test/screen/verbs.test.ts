import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { VERBS } from '../../src/command/typed/verbs.ts';
import { ROOT } from '../sources.ts';
import { withBrowser } from './browser.ts';

const open = withBrowser();

// Of each row of the table its verb, and the rooms that it names.
const rows = [
  ...readFileSync(path.join(ROOT, 'docs/page.md'), 'utf8').matchAll(/^\| `(\w+)` \| (.*) \|$/gmu),
].map(([, verb = '', where = '']) => ({
  verb,
  where,
  rooms: [...where.matchAll(/\*\*(.*?)\*\*/gu)].map(([, name = '']) => name),
}));

it('each verb of the command has one row in the table, which names rooms of the page', async () => {
  expect(rows.map(({ verb }) => verb).toSorted()).toEqual(
    [...Object.keys(VERBS), 'screen'].toSorted(),
  );
  const { page } = await open();
  const there = await page.locator('.head').getByRole('button').allTextContents();
  const menus = await page.locator('.head summary').allTextContents();
  const named = new Set(rows.flatMap(({ rooms }) => rooms));
  expect(named.size).toBeGreaterThan(1);
  for (const name of named) expect([...there, ...menus]).toContain(name);
  const silent = rows.filter(({ rooms, where }) => {
    return rooms.length === 0 && !/by the command alone|opens the page/u.test(where);
  });
  expect(silent).toEqual([]);
});
