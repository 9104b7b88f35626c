import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { pagesOf } from '../paper.ts';
import { ROOT } from '../sources.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';

const open = withBrowser();
const folder = mkdtempSync(path.join(tmpdir(), 'holdturn-print-'));
afterAll(() => rmSync(folder, { recursive: true }));

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

// Every word that is said: lines and pages break elsewhere, and a table begins again with its heads.
function wordsOf(pdf: Uint8Array): string[] {
  const words = pagesOf(pdf).flatMap((page) =>
    page.words.filter(({ top, bottom }) => top > 60 && bottom < page.height - 50),
  );
  return [...new Set(words.map(({ text }) => text))].toSorted();
}

describe('sheets from the page', () => {
  it.each([
    ['Application chart', 'chart'],
    ['Strip sheet', 'strip'],
    ['One-way card', 'one-way'],
    ['Measure and select', 'measure'],
  ])('%s says what the command prints', async (name, kind) => {
    const { page, complaints } = await open();
    await press(page, 'Print');
    await press(page, name);
    await page.locator('.sheet-title, h2', { hasText: name }).first().waitFor();
    const printed = wordsOf(await page.pdf({ preferCSSPageSize: true }));
    const file = path.join(folder, `${kind}.pdf`);
    const train = path.join(ROOT, 'trains/kestrel-three-speed.train.yaml');
    execFileSync(process.execPath, [
      path.join(ROOT, 'dist/cli.cjs'),
      'sheet',
      kind,
      train,
      '-o',
      file,
    ]);
    expect(printed).toEqual(wordsOf(readFileSync(file)));
    expect(complaints).toEqual([]);
  });

  it('shows the drawings of the other rooms too, to print and as files', async () => {
    const { page, complaints } = await open('', { locale: 'es-MX' });
    await press(page, 'Imprimir');
    await press(page, 'Dibujos');
    const end = page.getByRole('button', { name: /^Desde un lado/u }).first();
    for (const name of [
      'Esquema cinemático en marcha',
      'Diagrama de palancas',
      await end.innerText(),
      'Fila de despiece',
    ]) {
      await press(page, name);
      await page.locator('.sheet-title, h2', { hasText: name }).first().waitFor();
      const words = wordsOf(await page.pdf({ preferCSSPageSize: true }));
      expect(words).toEqual(expect.arrayContaining(name.split(' ')));
    }
    await press(page, 'Esquema cinemático en marcha');
    const file = async (kind: string) => {
      const [download] = await Promise.all([page.waitForEvent('download'), press(page, kind)]);
      return readFileSync(await download.path());
    };
    const svg = (await file('SVG')).toString();
    expect(svg).toContain('A trazos: quieto; a puntos: libre.');
    expect(svg).toContain('143 N·m');
    expect((await file('PNG')).subarray(1, 4).toString()).toBe('PNG');
    expect(await accessFaults(page)).toEqual([]);
    expect(complaints).toEqual([]);
  });

  it('keep to A4 and to Letter, and can be chosen without seeing', async () => {
    const { page } = await open();
    await press(page, 'Print');
    await press(page, 'Letter');
    const size = async () => {
      const [first] = pagesOf(await page.pdf({ preferCSSPageSize: true }));
      return [first?.width, first?.height].map((points = 0) => Math.round(points));
    };
    await expect.poll(size).toEqual([612, 792]);
    expect(await accessFaults(page)).toEqual([]);
  });
});
