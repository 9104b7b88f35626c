import { expect, it } from 'vitest';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const TABLET = { viewport: { width: 820, height: 1180 }, hasTouch: true };

it('a pack is told by gloves, a wrong count at its question, and the last answer taken back', async () => {
  const { page } = await open(linkTo(ourText('wren-plain-set')), TABLET);
  await page.getByRole('button', { name: 'Describe it' }).tap();
  const asked = page.locator('.describe-ask');
  const tap = async (...names: string[]) => {
    for (const name of names) await asked.getByRole('button', { name, exact: true }).tap();
  };
  const hears = (words: string) =>
    page.locator('.describe-question').filter({ hasText: words }).waitFor();
  await tap('A pack of plates');
  await hears('Whose plates are they?');
  const [device = ''] = await asked.locator('.tiles button').allTextContents();
  await tap(device, 'A steel', '4', '0', 'Next');
  await expect.poll(() => asked.getByRole('alert').textContent()).toContain('hardly ever over 16');
  await page.getByRole('button', { name: 'Take back the last answer' }).tap();
  await tap('A steel', '2', 'Next', '3', 'Next');
  await hears('how thick is a friction');
  await tap('2', 'Decimal point', '0', '0', 'Next', 'in', '0', 'Decimal point', '0', '7', 'Next');
  // A reload loses none of it.
  await page.reload();
  await hears('does anything else lie in the pack?');
  await tap('Nothing more');
  expect(await accessFaults(page)).toEqual([]);
  const small = await asked
    .locator('button')
    .evaluateAll((all) =>
      all.flatMap((one) => (one.getBoundingClientRect().height < 72 ? [one.textContent] : [])),
    );
  expect(small).toEqual([]);
  await tap('Nothing more');
  await hears('All is asked');
  // The round that was written is asked again, at its last answer.
  await tap('Take back the last answer');
  await hears('what do you know of it?');
  await tap('Nothing more');
  await hears('All is asked');
  await page.getByRole('button', { name: 'As text' }).tap();
  await page.locator('.cm-line').first().waitFor();
  const lines = await page.locator('.cm-line').allTextContents();
  const { packs } = readTrain(lines.join('\n')).train as Train;
  expect(packs?.map(({ plates }) => plates.map((its) => `${its.kind} ${its.thickness}`))).toEqual([
    ['steel 0.07 in', 'friction 2.00 mm', 'steel 0.07 in', 'friction 2.00 mm', 'steel 0.07 in'],
  ]);
});
