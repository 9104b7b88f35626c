/**
 * Takes the pictures of the page that stand in docs/ anew: `npm run build`, then
 * `node scripts/run.mjs scripts/pictures.ts`. In Debian's chromium, or the one that CHROMIUM names.
 */
import { writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { chromium, type Locator, type Page } from 'playwright-core';
import sirv from 'sirv';
import { palettePng } from './palette.ts';

const files = sirv('dist/web', { dev: true });
const server = createServer((request, response) =>
  files(request, response, () => void response.end()),
);
await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
// Nothing turns in a picture, and none shows a caret.
const context = await browser.newContext({
  viewport: { width: 1280, height: 830 },
  reducedMotion: 'reduce',
  serviceWorkers: 'block',
});
const page = await context.newPage();
// A busy machine takes its time.
page.setDefaultTimeout(120_000);

await page.goto(address);
await page.waitForSelector('.why li');
await page.locator('.gears').getByRole('button', { name: '2', exact: true }).first().click();
await page.waitForTimeout(2000);
await keep('page', page);
await page.setViewportSize({ width: 1000, height: 780 });
await page.waitForTimeout(1000);
await keep('end', page.locator('.ends-view').first());
await keep('lever', page.locator('.lever-sheet').first());
await keep('chart', page.locator('.chart').first());
await page.getByRole('button', { name: 'Ask the class', exact: true }).click();
await page.locator('.lesson-question').waitFor();
await page.waitForTimeout(2000);
await page.setViewportSize({ width: 1000, height: 470 });
await page.evaluate('scrollTo(0, 0)');
await keep('class', page);

await browser.close();
server.close();

async function keep(name: string, of: Page | Locator): Promise<void> {
  const shot = await of.screenshot({ caret: 'hide' });
  const read = `(async () => {
    const image = new Image();
    image.src = 'data:image/png;base64,${shot.toString('base64')}';
    await image.decode();
    const canvas = new OffscreenCanvas(image.width, image.height);
    const pen = canvas.getContext('2d');
    pen.drawImage(image, 0, 0);
    const { data } = pen.getImageData(0, 0, image.width, image.height);
    let bytes = '';
    for (let i = 0; i < data.length; i += 32768) {
      bytes += String.fromCharCode(...data.subarray(i, i + 32768));
    }
    return { width: image.width, height: image.height, bytes: btoa(bytes) };
  })()`;
  const blank = await context.newPage();
  const picture = await blank.evaluate<{ width: number; height: number; bytes: string }>(read);
  await blank.close();
  const pixels = Buffer.from(picture.bytes, 'base64');
  writeFileSync(`docs/${name}.png`, palettePng(pixels, picture.width, picture.height));
}
