import { existsSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { chromium, type Page } from 'playwright-core';
import sirv from 'sirv';
import { afterEach, beforeAll, expect } from 'vitest';
import { ROOT } from '../sources.ts';
import { type Visit, Visitors } from './visitors.ts';

/** Debian's chromium, or the one that CHROMIUM names. */
export const CHROMIUM = process.env['CHROMIUM'] ?? '/usr/bin/chromium';

export interface Opened {
  readonly page: Page;
  readonly address: string;
  /** What the page complained of: errors, and what its security policy refused. */
  readonly complaints: readonly string[];
}

// One server and one browser a worker: to start them for each file costs more than most files.
let serving: Promise<string> | undefined;
let visiting: Promise<Visitors> | undefined;

/** Serves the page to a test file; gives its address, once the tests run. */
export function withServer(): () => string {
  let address = '';
  beforeAll(async () => {
    address = await (serving ??= served());
  });
  return () => address;
}

async function served(): Promise<string> {
  const folder = path.join(ROOT, 'dist/web');
  expect(existsSync(path.join(folder, 'index.html')), 'npm run build makes dist/web').toBe(true);
  expect(existsSync(CHROMIUM), 'apt-get install chromium, or set CHROMIUM').toBe(true);
  const files = sirv(folder, { etag: true });
  const server = createServer((request, response) => files(request, response));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  server.unref();
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
}

/** Gives a test file a browser and a static server; `open` gives a page with nothing kept. */
export function withBrowser(): (hash?: string, visit?: Visit) => Promise<Opened> {
  const address = withServer();
  let visitors: Visitors;
  beforeAll(async () => {
    visitors = await (visiting ??= started(address()));
  });
  // A page that stays open goes on turning.
  afterEach(() => visitors.leave());
  return async (hash = '', visit = {}) => {
    const page = await visitors.come(visit);
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    await page.goto(`${address()}${hash}`);
    // The train is answered, or the file is said to be none.
    await page.waitForSelector('.why li, .problems, .begin-list li');
    return { page, address: address(), complaints };
  };
}

async function started(address: string): Promise<Visitors> {
  const browser = await chromium.launch({
    executablePath: CHROMIUM,
    args: ['--no-sandbox', '--disable-dev-shm-usage'],
  });
  // One that has fallen is started anew for the file that comes next.
  browser.once('disconnected', () => (visiting = undefined));
  return new Visitors(browser, address);
}
