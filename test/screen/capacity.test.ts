import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { ask } from '../../src/doors/cli/asked.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const KESTREL = 'trains/kestrel-three-speed.train.yaml';

const margins = (page: Page) => page.getByRole('region', { name: 'What slips first' });
const chart = (page: Page) => page.getByRole('region', { name: 'The chart' });

/** Cells of a table, a row a line, blanks as one. */
async function rowsOf(page: Page, table: string): Promise<string[]> {
  const all = await page
    .locator(`${table} tbody tr`)
    .evaluateAll((rows) =>
      rows.map((row) => [...row.children].map((cell) => cell.textContent?.trim()).join(' ')),
    );
  return all.map((row) => row.replaceAll(/\s+/gu, ' ').trim());
}

const flat = (text: string) => text.replaceAll(/\s+/gu, ' ');

describe('torque capacity and the chart on the page', () => {
  it('tells of each gear what the command tells, in the unit of pressure that is chosen', async () => {
    const { page, complaints } = await open();
    await margins(page).getByText('Torque capacity of each gear').click();
    await margins(page).getByRole('button', { name: 'psi', exact: true }).click();
    await margins(page).getByLabel('Pressure at every piston').fill('130');
    await margins(page).getByLabel('Torque of the engine').fill('231 Nm');
    const { out } = await ask(`capacity ${KESTREL} --pressure "130 psi" --torque "231 Nm"`);
    const said = flat(out);
    const first = await margins(page).locator('.margins-first').textContent();
    expect(said).toContain(flat(first ?? '?'));
    expect(await margins(page).textContent()).toContain('holds from, psi');
    // Gear, then what passes, the margin, what slips first, and the least pressure.
    const [row = ''] = await rowsOf(page, '.margins-wide');
    const [, passes, spare, slips, least] =
      /^D 1 under power \d+ (\d+) ([\d.]+) (.*?)(?: slips)? (\d+)$/u.exec(row) ?? [];
    expect(said).toContain(`D 1 ${passes} ${spare} ${slips} ${least} D 2`);

    // A gear opens its devices.
    await margins(page).getByRole('button', { name: 'L 2' }).click();
    const one = await ask(
      `capacity ${KESTREL} --pressure "130 psi" --torque "231 Nm" --range L --gear 2`,
    );
    for (const device of await rowsOf(page, '.margins-devices')) {
      expect(flat(one.out)).toContain(device);
    }
    expect(await accessFaults(page)).toEqual([]);
    await margins(page).getByLabel('Torque of the engine').fill('much');
    expect(await margins(page).getByRole('alert').textContent()).toContain('much');
    expect(complaints).toEqual([]);
  });

  it('tells the swaps, each with the gear in which an overlap or a gap drives', async () => {
    const { page } = await open();
    await chart(page).getByText('Every combination, and').click();
    await page.locator('[aria-label="Shifts by one device"]').waitFor();
    const { out } = await ask(`chart ${KESTREL}`);
    const swaps = await rowsOf(page, '[aria-label="Shifts by one device"]');
    expect(swaps.length).toBeGreaterThan(5);
    for (const swap of swaps) expect(flat(out)).toContain(swap);
    expect(swaps).toContain('D 2 > L 1 second brake low brake tied up drives: D 1');
    expect(flat(out)).toContain('5 friction devices, 32 combinations');
    expect(await chart(page).textContent()).toContain('5 friction devices, 32 combinations');
  });

  it('says what is missing where the file tells no capacities', async () => {
    const { page } = await open(linkTo(ourText('wren-plain-set')));
    expect(await margins(page).textContent()).toContain('no capacities in');
  });
});
