import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { deflateRawSync } from 'node:zlib';
import { chromium, type Page } from 'playwright-core';
import sirv from 'sirv';

// When a dial's face has turned, in milliseconds since the page was asked for.
const MOVES = `new Promise((resolve) => {
  const look = () => {
    const faces = [...document.querySelectorAll('.dial-face')];
    const turned = faces.some((face) => /rotate\\(-?[\\d.]*[1-9]/u.test(face.getAttribute('transform')));
    if (turned) resolve(performance.now());
    else requestAnimationFrame(look);
  };
  look();
})`;

// The screen in Debian's chromium, without a graphics card: from a drag to the painted frame on
// the ten-speed, and from a cold static server to the first picture, and until it moves.
const server = createServer((request, response) =>
  files(request, response, () => void response.end()),
);
const files = sirv('dist/web', { dev: true });
await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });

const ten = readFileSync('trains/albatross-ten-speed.train.yaml', 'utf8');
const page = await browser.newPage({ viewport: { width: 1400, height: 900 } });
await page.goto(`${address}#train=${deflateRawSync(ten).toString('base64url')}`);
await page.locator('h1', { hasText: 'Albatross' }).waitFor();
await page.waitForTimeout(1000);
print('drag to painted frame, ten-speed', await drag(page));
await page.close();

const first: number[] = [];
const moving: number[] = [];
for (let run = 0; run < 7; run++) {
  // A context of its own: nothing kept.
  const context = await browser.newContext({ viewport: { width: 1400, height: 900 } });
  const cold = await context.newPage();
  const debug = await context.newCDPSession(cold);
  await debug.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await cold.addInitScript(`globalThis.moves = ${MOVES}`);
  await cold.goto(address);
  await cold.waitForSelector('.dial-face[transform]');
  first.push(
    await cold.evaluate<number>(
      "performance.getEntriesByName('first-contentful-paint')[0].startTime",
    ),
  );
  moving.push(await cold.evaluate<number>('globalThis.moves'));
  await context.close();
}
print('first picture, cold, processor slowed 4 times', first);
print('and it moves', moving);

await browser.close();
server.close();

// From the page's hearing of the pointer to the end of the frame's paint.
async function drag(on: Page): Promise<number[]> {
  const box = await on.locator('.handle[data-name="turbine shaft"] .dial-rim').boundingBox();
  if (!box) throw new Error('no dial');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await on.evaluate(`(() => {
    const times = (globalThis.dragTimes = []);
    document.addEventListener('pointermove', () => {
      const begun = performance.now();
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => times.push(performance.now() - begun);
        port2.postMessage(0);
      });
    }, { capture: true });
  })()`);
  await on.mouse.move(x + 15, y);
  await on.mouse.down();
  for (let step = 1; step <= 300; step++) {
    const angle = step * 0.15;
    await on.mouse.move(x + 15 * Math.cos(angle), y + 15 * Math.sin(angle));
  }
  await on.mouse.up();
  return on.evaluate<number[]>('dragTimes.slice(5)');
}

function print(what: string, times: readonly number[]): void {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (part: number) => (sorted[Math.floor((sorted.length - 1) * part)] ?? NaN).toFixed(1);
  process.stdout.write(
    `${what}: median ${at(0.5)} ms, 99th percentile ${at(0.99)} ms, ${times.length} times\n`,
  );
}
