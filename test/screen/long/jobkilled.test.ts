import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { Dice, seedOfRun } from '../../dice.ts';
import { CHROMIUM, withServer } from '../browser.ts';
import { begin, button, said, storesAreQuiet } from '../jobs.ts';

// How often the browser is killed: at a few fixed moments, or at as many of chance as KILLS says.
const given = process.env['KILLS'];
const dice = new Dice(seedOfRun());
const MOMENTS =
  given === undefined
    ? [40, 333, 1200]
    : Array.from({ length: Number(given) }, () => dice.whole(0, 1500));

const address = withServer();
const profile = mkdtempSync(path.join(tmpdir(), 'holdturn-killed-'));
let alive: ChildProcess | undefined;
afterAll(() => {
  if (alive) kill(alive);
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
});

// The whole family of processes at once, as when the power goes.
function kill({ pid }: ChildProcess): void {
  if (pid === undefined) return;
  try {
    process.kill(-pid, 'SIGKILL');
  } catch {
    // It is gone.
  }
}

/** A browser of its own, always with the same profile. */
async function started(): Promise<{ browser: Browser; page: Page; child: ChildProcess }> {
  const options = ['--headless', '--no-sandbox', '--disable-dev-shm-usage', '--no-first-run'];
  const child = spawn(
    CHROMIUM,
    [...options, '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'],
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  alive = child;
  const socket = await new Promise<string>((resolve, reject) => {
    let told = '';
    child.stderr?.setEncoding('utf8').on('data', (more: string) => {
      told += more;
      const found = /listening on (ws:\S+)/u.exec(told)?.[1];
      if (found !== undefined) resolve(found);
    });
    child.once('exit', () => reject(new Error(told)));
  });
  const browser = await chromium.connectOverCDP(socket);
  const context = browser.contexts()[0] ?? (await browser.newContext());
  const page = await context.newPage();
  await page.goto(address());
  await page.waitForSelector('.why li, .begin');
  return { browser, page, child };
}

/**
 * Types readings of one thing, and writes none of them down; says of each, once it is on the screen
 * and whatever was begun before it is on the disk, which it was.
 */
async function types(page: Page, round: number): Promise<void> {
  await button(page, 'Measure').click();
  const back = button(page, '‹ All that is measured');
  const tile = page.locator('.measure .tiles button');
  await back.or(tile.first()).first().waitFor();
  if (await back.isVisible()) await back.click();
  await tile.nth(round % THINGS).click();
  const input = page.locator('.decimal-shown input');
  for (let n = 0; ; n++) {
    const digits = `1.${String(100 * (round + 1) + n)}`;
    /* oxlint-disable no-await-in-loop -- as somebody types */
    await input.fill(digits);
    await page.keyboard.press('Enter');
    await page.locator('.measure-readings', { hasText: digits }).waitFor();
    await storesAreQuiet(page);
    await page.evaluate((text) => (window as unknown as Told).kept(text), digits);
    /* oxlint-enable no-await-in-loop */
  }
}

// Packs and shafts, whose first way takes as many readings as there are.
const THINGS = 4;

interface Told {
  kept(text: string): void;
}

/**
 * Writes notes and photographs as fast as the page says that they are kept, and says of each, when
 * the page does, which it was.
 */
async function write(page: Page, round: number): Promise<void> {
  await page.evaluate(async (its) => {
    const turn = () => new Promise((resolve) => setTimeout(resolve));
    const canvas = Object.assign(document.createElement('canvas'), { width: 900, height: 700 });
    const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
    const until = async (seen: () => boolean) => {
      // oxlint-disable-next-line no-await-in-loop
      while (!seen()) await turn();
    };
    const all = () => [...document.querySelectorAll('.jobs-said')].map((p) => p.textContent ?? '');
    for (let n = 0; ; n++) {
      const text = `${its}-${n}`;
      if (n % 4 === 3) {
        pen.fillStyle = `hsl(${n * 37} 80% 50%)`;
        for (let k = 0; k < 300; k++) pen.fillRect((k * n * 91) % 900, (k * 57) % 700, 40, 40);
        const part = document.querySelector<HTMLInputElement>('.jobs-pictures .job-field input');
        if (part) part.value = text;
        part?.dispatchEvent(new InputEvent('input', { bubbles: true }));
        // oxlint-disable-next-line no-await-in-loop
        await turn();
        // oxlint-disable-next-line no-await-in-loop
        const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve));
        const files = new DataTransfer();
        files.items.add(new File([blob ?? ''], 'a.png', { type: 'image/png' }));
        const input = document.querySelectorAll<HTMLInputElement>('.job-take input')[1];
        if (input) input.files = files.files;
        input?.dispatchEvent(new Event('change', { bubbles: true }));
        // oxlint-disable-next-line no-await-in-loop
        await until(() => all().some((told) => told.endsWith(`of ${text}`)));
      } else {
        const note = document.querySelector<HTMLTextAreaElement>('.jobs-note textarea');
        if (note) note.value = text;
        note?.dispatchEvent(new InputEvent('input', { bubbles: true }));
        // oxlint-disable-next-line no-await-in-loop
        await turn();
        document.querySelector<HTMLButtonElement>('.jobs-note button')?.click();
        // oxlint-disable-next-line no-await-in-loop
        await until(() => all().includes(text));
      }
      if (document.querySelector('.job-unkept')?.textContent !== '') throw new Error('not kept');
      (window as unknown as Told).kept(text);
    }
  }, round);
}

describe('a browser that is killed while a job is written', () => {
  it(
    `has all that it said was kept (SEED=${seedOfRun()}, ${MOMENTS.length} kills)`,
    async () => {
      const kept: string[] = [];
      const typed: string[] = [];
      for (const [round, moment] of [...MOMENTS, undefined].entries()) {
        // oxlint-disable-next-line no-await-in-loop
        const { browser, page, child } = await started();
        // oxlint-disable-next-line no-await-in-loop
        if (round === 0) await begin(page);
        // oxlint-disable-next-line no-await-in-loop
        else await mustHave(page, kept, typed);
        if (moment === undefined) {
          kill(child);
          break;
        }
        const work = round % 3 === 2 ? types : write;
        let heard = () => {};
        const first = new Promise<void>((resolve) => (heard = resolve));
        // oxlint-disable-next-line no-await-in-loop
        await page.exposeFunction('kept', (text: string) => {
          (work === types ? typed : kept).push(text);
          heard();
        });
        const writing = work(page, round).catch((error: Error) => error.message);
        // oxlint-disable-next-line no-await-in-loop
        expect(await Promise.race([first, writing])).toBe(undefined);
        // oxlint-disable-next-line no-await-in-loop
        await new Promise((resolve) => setTimeout(resolve, moment));
        kill(child);
        // oxlint-disable-next-line no-await-in-loop
        expect(await writing).not.toContain('not kept');
        // oxlint-disable-next-line no-await-in-loop
        await browser.close().catch(() => {});
      }
      expect(kept.length + typed.length).toBeGreaterThanOrEqual(MOMENTS.length);
    },
    60_000 + MOMENTS.length * 30_000,
  );
});

// Every entry, of every photograph its picture, whole, and every number that was typed.
async function mustHave(
  page: Page,
  kept: readonly string[],
  typed: readonly string[],
): Promise<void> {
  expect(await lost(page, typed)).toEqual([]);
  await button(page, 'Job').click();
  await page.locator('.jobs-entries').waitFor();
  const texts = (await said(page)).map((text) => text.replace(/^Photograph: .*, of /u, ''));
  const there = new Set(texts);
  expect(kept.filter((text) => !there.has(text))).toEqual([]);
  // Whose hand writes is no entry: that may have to be told again.
  await page.getByLabel('Your initials').fill('TW');
  // They are read after the entries, and decoded after that.
  await expect.poll(() => page.evaluate(notShown), { timeout: 30_000 }).toEqual([]);
}

// By what the browser has of this job: a number stands there until it is written down or struck.
async function lost(page: Page, typed: readonly string[]): Promise<readonly string[]> {
  if (typed.length === 0) return [];
  const there = await page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const asked = indexedDB.open('holdturn measure');
      asked.addEventListener('success', () => resolve(asked.result));
    });
    const all = await new Promise<unknown>((resolve) => {
      const asked = database.transaction('readings').objectStore('readings').getAll();
      asked.addEventListener('success', () => resolve(asked.result));
    });
    database.close();
    return JSON.stringify(all);
  });
  return typed.filter((digits) => !there.includes(`${digits} `));
}

function notShown(): (string | null)[] {
  const all = [...document.querySelectorAll<HTMLLIElement>('.jobs-gallery li')];
  return all.filter((li) => !li.querySelector('img')?.naturalWidth).map((li) => li.textContent);
}
