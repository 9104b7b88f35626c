import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessFaults } from '../access.ts';
import { withBrowser } from '../browser.ts';
import { buildAt, buildTo, startBuild } from '../builds.ts';

const open = withBrowser();
const TABLET = { viewport: { width: 820, height: 1180 }, hasTouch: true };

// What a browser that can do all of it has, in the place of what this one has.
interface Device {
  readonly voices: readonly { readonly lang: string; readonly localService: boolean }[];
  readonly hears: 'available' | 'elsewhere';
  readonly wakes: boolean;
}

declare global {
  interface Window {
    said: string[];
    locks: number;
    hear(words: string): void;
  }
}

// Before the page's own scripts.
async function onDevice(device: Device): Promise<Page> {
  const { page } = await open('', TABLET);
  await page.addInitScript((its: Device) => {
    globalThis.window.said = [];
    window.locks = 0;
    const put = (on: object, name: string, value: unknown) =>
      Object.defineProperty(on, name, { value, configurable: true });
    put(
      window,
      'speechSynthesis',
      Object.assign(new EventTarget(), {
        getVoices: () => its.voices.map((voice) => ({ ...voice, name: 'a voice', default: false })),
        speak(part: EventTarget & { text: string }) {
          window.said.push(part.text);
          setTimeout(() => part.dispatchEvent(new Event('end')), 5);
        },
        cancel: () => undefined,
      }),
    );
    put(
      window,
      'SpeechSynthesisUtterance',
      class extends EventTarget {
        readonly text: string;
        constructor(text: string) {
          super();
          this.text = text;
        }
      },
    );
    const ears = new Set<EventTarget>();
    window.hear = (words) => {
      const results = [Object.assign([{ transcript: words }], { isFinal: true })];
      for (const ear of ears) {
        ear.dispatchEvent(Object.assign(new Event('result'), { results, resultIndex: 0 }));
      }
    };
    class Hears extends EventTarget {
      start(): void {
        const { processLocally } = this as { processLocally?: boolean };
        if (processLocally !== true) throw new Error('what was said would be sent away');
        ears.add(this);
      }
      abort(): void {
        ears.delete(this);
      }
    }
    if (its.hears === 'available') {
      put(Hears.prototype, 'processLocally', false);
      Object.defineProperty(Hears.prototype, 'processLocally', { value: false, writable: true });
      put(Hears, 'available', ({ processLocally }: { processLocally?: boolean }) => {
        return Promise.resolve(processLocally ? 'available' : 'unavailable');
      });
    }
    put(window, 'SpeechRecognition', Hears);
    put(window, 'webkitSpeechRecognition', Hears);
    const lock = { release: () => Promise.resolve() };
    const request = () => {
      window.locks++;
      return Promise.resolve(lock);
    };
    if (its.wakes) put(Navigator.prototype, 'wakeLock', { request });
    else Reflect.deleteProperty(Navigator.prototype, 'wakeLock');
  }, device);
  await page.reload();
  await page.waitForSelector('.why li');
  return page;
}

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });
const told = (page: Page) => page.locator('.hands-free').textContent();
// A word that comes sooner was meant for the screen before; milliseconds.
const MEANT = 1000;
async function hear(page: Page, words: string): Promise<void> {
  await page.waitForTimeout(MEANT);
  await page.evaluate((its) => window.hear(its), words);
}

describe('hands-free', () => {
  it('reads each step aloud, hears a word on the device, and passes no stop by it', async () => {
    const page = await onDevice({
      voices: [
        { lang: 'en-US', localService: false },
        { lang: 'en-GB', localService: true },
      ],
      hears: 'available',
      wakes: true,
    });
    await startBuild(page);
    await buildTo(page, '5');
    await button(page, 'Hands-free').tap();
    await expect.poll(() => page.evaluate(() => window.said[0])).toMatch(/^5\. /u);
    await button(page, 'Answer by voice').tap();
    await expect.poll(() => told(page)).toContain('next, right, wrong and again');
    const { height = 0 } = (await button(page, 'Done').boundingBox()) ?? {};
    expect(height).toBeGreaterThanOrEqual(120);
    expect(await accessFaults(page)).toEqual([]);
    await hear(page, 'next to the drum');
    await hear(page, 'Next.');
    await buildAt(page, '6');
    await hear(page, 'next');
    await buildAt(page, '6.1');
    await expect.poll(() => page.evaluate(() => window.said.at(-1))).toMatch(/^Right: it /u);
    await hear(page, 'next');
    await expect.poll(() => told(page)).toContain('Heard: next. Here it takes a press.');
    await hear(page, 'wrong');
    await button(page, 'It was right after all').tap();
    await hear(page, 'right');
    await buildAt(page, '7');
    await hear(page, 'next');
    await buildAt(page, '8');
    await hear(page, 'next');
    await buildAt(page, '8 stop');
    await expect
      .poll(() => page.evaluate(() => window.said.at(-1)))
      .toContain('passed by a press, and by nothing else');
    for (const word of ['next', 'right', 'wrong']) {
      // oxlint-disable-next-line eslint/no-await-in-loop
      await hear(page, word);
    }
    await buildAt(page, '8 stop');
    const before = await page.evaluate(() => window.said.length);
    await hear(page, 'again');
    await expect.poll(() => page.evaluate(() => window.said.length)).toBeGreaterThan(before);

    // Awake, and again after the page was hidden.
    const locks = await page.evaluate(() => {
      document.dispatchEvent(new Event('visibilitychange'));
      return window.locks;
    });
    expect(locks).toBe(2);
    expect(await told(page)).toContain('The screen stays awake.');
  });

  it('offers nothing that would be sent away, and says why; in Spanish too', async () => {
    const page = await onDevice({
      voices: [{ lang: 'en-US', localService: false }],
      hears: 'elsewhere',
      wakes: false,
    });
    await startBuild(page);
    await button(page, 'Hands-free').tap();
    await expect
      .poll(() => told(page))
      .toMatch(/no English voice of its own.*would send what it hears/su);
    expect(await told(page)).toContain('cannot keep the screen awake');
    expect(await button(page, 'Answer by voice').count()).toBe(0);
    expect(await page.evaluate(() => window.said)).toEqual([]);
    await page.getByText('View').first().tap();
    await page.getByLabel('Language').selectOption('es');
    await expect
      .poll(() => told(page))
      .toMatch(/Manos libres.*voz española propia.*mandaría a otro/su);
  });
});
