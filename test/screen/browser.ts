import { existsSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import sirv from 'sirv';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { ROOT } from '../sources.ts';

/** Debian's chromium, or the one that CHROMIUM names. */
export const CHROMIUM = process.env['CHROMIUM'] ?? '/usr/bin/chromium';

export interface Opened {
  readonly page: Page;
  readonly address: string;
  /** What the page complained of: errors, and what its security policy refused. */
  readonly complaints: readonly string[];
}

/** Whether nobody has been here before, and how the browser is. */
type Options = BrowserContextOptions & { readonly isFirst?: boolean };

/** Serves the page to a test file; gives its address, once the tests run. */
export function withServer(): () => string {
  const folder = path.join(ROOT, 'dist/web');
  const server = createServer((request, response) => files(request, response));
  const files = sirv(folder, { dev: true });
  let address = '';
  beforeAll(async () => {
    expect(existsSync(path.join(folder, 'index.html')), 'npm run build makes dist/web').toBe(true);
    expect(existsSync(CHROMIUM), 'apt-get install chromium, or set CHROMIUM').toBe(true);
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  });
  afterAll(() => void server.close());
  return () => address;
}

/** Gives a test file a browser and a static server; `open` gives a page with nothing kept. */
export function withBrowser(): (hash?: string, options?: Options) => Promise<Opened> {
  const served = withServer();
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({
      executablePath: CHROMIUM,
      args: ['--no-sandbox', '--disable-dev-shm-usage'],
    });
  });
  // A page that stays open goes on turning.
  afterEach(async () => {
    await Promise.all(browser.contexts().map((context) => context.close()));
  });
  afterAll(async () => {
    await browser?.close();
  });
  return async (hash = '', { isFirst = false, ...options } = {}) => {
    const address = served();
    const context = await browser.newContext({
      viewport: { width: 1400, height: 900 },
      serviceWorkers: 'block',
      ...options,
    });
    // As one comes back to it; for the first visit there is a test of its own.
    if (!isFirst) await context.addInitScript("localStorage.setItem('holdturn begun', 'yes')");
    context.setDefaultTimeout(10_000);
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    await page.goto(`${address}${hash}`);
    // The train is answered, or the file is said to be none.
    await page.waitForSelector('.why li, .problems, .begin-list li');
    return { page, address, complaints };
  };
}
