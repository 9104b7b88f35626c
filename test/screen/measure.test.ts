import { readFileSync } from 'node:fs';
import { voiceOf } from '../../src/telling/narrative/index.ts';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { askEndPlays, askPacks, askWear } from '../../src/asking/build/index.ts';
import { entryTold, openJob } from '../../src/asking/job/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { readJob } from '../../src/shop/records/index.ts';
import { packText } from '../../src/telling/report/index.ts';
import { ROOT } from '../sources.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { begin, button, note, saved, textSaved, storesAreQuiet } from './jobs.ts';

const open = withBrowser();
const TABLET = { viewport: { width: 820, height: 1180 }, hasTouch: true };
const TEXT = readFileSync(path.join(ROOT, 'trains/kestrel-three-speed.train.yaml'), 'utf8');
const KESTREL = readTrain(TEXT).train as Train;

const room = (page: Page) => page.getByRole('region', { name: 'Measure' });
const stands = (page: Page) => room(page).locator('.measure-head b').textContent();
const against = (page: Page) => room(page).locator('.measure-against');
const parts = (page: Page) => room(page).locator('.measure-parts button');
const typed = (page: Page) =>
  room(page).locator('.measure-field button, .measure-field s').allTextContents();

/** Whoever measures, by touch alone. */
class Hands {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  async press(name: string | RegExp): Promise<void> {
    await room(this.page).getByRole('button', { name, exact: true }).tap();
  }

  async go(name: string): Promise<void> {
    const back = room(this.page).getByRole('button', { name: 'All that is measured' });
    if (await back.isVisible()) await back.tap();
    await room(this.page).locator('.tiles button', { hasText: name }).tap();
    await room(this.page).locator('.measure-head').waitFor();
  }

  async by(way: string): Promise<void> {
    await room(this.page).locator('.measure-ways > button').tap();
    await this.press(way);
  }

  async unit(unit: string): Promise<void> {
    const key = room(this.page).locator('.decimal-units button', {
      hasText: new RegExp(`^${unit}$`, 'u'),
    });
    await key.tap();
  }

  async types(...numbers: string[]): Promise<void> {
    for (const number of numbers) {
      for (const key of number) await this.press(key === '.' ? 'Decimal point' : key);
      await room(this.page).locator('.number-pad > .large-main').tap();
    }
  }

  async write(): Promise<void> {
    await this.press('Write it down');
    await room(this.page).getByText('Written down.').waitFor();
  }
}

async function measuring(page: Page): Promise<Hands> {
  await button(page, 'Measure').click();
  await room(page).locator('.tiles').waitFor();
  return new Hands(page);
}

const flat = (text: string) => text.replaceAll(/\s+/gu, ' ');

describe('the room to measure in', () => {
  it('measures a unit by touch, asks about what cannot be, and writes what the command writes', async () => {
    const { page, complaints } = await open('', TABLET);
    await begin(page);
    const hands = await measuring(page);

    // Too large for its limits: the ring is chosen, and the reading with it in closes it.
    await hands.go('second brake');
    await hands.unit('mm');
    await hands.types('1.38', '1.40', '1.39');
    expect(await stands(page)).toContain('outside');
    await hands.write();
    const said = await room(page).locator('.measure-says, .measure-shelf > p').allTextContents();
    const sentences = [
      ...(await room(page).locator('.measure-says > p').allTextContents()),
      said[1] ?? '',
    ];
    expect(sentences.length).toBeGreaterThan(3);
    await parts(page).nth(2).tap();
    await hands.press('Take the snap ring 1.80 mm, and write it down');
    // A reload in the middle comes back to the same reading.
    await hands.types('1.19');
    await storesAreQuiet(page);
    await page.reload();
    await expect.poll(() => typed(page)).toEqual(['1.80 mm', '1.19 mm']);
    await hands.types('1.18', '1.19');
    expect(await stands(page)).toContain('closed');
    await hands.write();

    // A plate is missing: no part is offered, and the reading is struck.
    await hands.go('forward clutch');
    await hands.unit('mm');
    await hands.types('3.12', '3.13', '3.12');
    expect(await against(page).textContent()).toContain('a plate is missing');
    expect(await against(page).textContent()).toContain('No part is offered');
    for (const part of await parts(page).all()) expect(await part.isDisabled()).toBe(true);
    await against(page).getByRole('button', { name: 'Strike all of these' }).tap();
    await hands.types('1.10', '1.12', '1.11');
    expect(await stands(page)).toContain('closed');
    expect((await typed(page)).slice(0, 3).every((text) => text.includes('(struck)'))).toBe(true);
    await hands.write();

    // A point that slipped: one of three is struck, and read again.
    await hands.go('turbine shaft');
    await hands.unit('mm');
    await hands.types('0.50', '5.1', '0.51');
    expect(await stands(page)).toContain('asked again');
    await against(page).getByRole('button', { name: 'Strike 5.1 mm' }).tap();
    await hands.types('0.52');
    expect(await against(page).count()).toBe(0);
    await hands.write();

    // The wrong unit: the same digits stand again as inches.
    await hands.go('main shaft');
    await hands.unit('mm');
    await hands.types('0.012', '0.013', '0.012');
    expect(await stands(page)).toContain('asked again');
    await against(page)
      .getByRole('button', { name: /^It was in: / })
      .tap();
    expect((await typed(page)).slice(3)).toEqual(['0.012 in', '0.013 in', '0.012 in']);
    expect(await stands(page)).not.toContain('asked again');
    await hands.write();

    await hands.go('stator bushing');
    await hands.unit('mm');
    await hands.types('38.10');
    await room(page).getByRole('heading', { name: 'bore' }).waitFor();
    await hands.types('38.04');
    await hands.write();
    await hands.go('intermediate band');
    await hands.types('1.75');
    await hands.write();
    expect(await accessFaults(page)).toEqual([]);

    // What was written down wrongly is struck with its reason.
    await hands.go('stator bushing');
    await room(page)
      .getByRole('button', { name: /^Strike: / })
      .tap();
    await hands.press('read wrong');
    await expect.poll(() => room(page).locator('.measure-written s').count()).toBe(1);
    expect(await stands(page)).toContain('nothing read yet');

    await button(page, 'Job').click();
    const text = await textSaved(page);
    const { job, problems } = readJob(text);
    expect(problems).toEqual([]);
    const told = job?.entries.flatMap((its) => (its.told ? [its.told] : []));
    // Word for word what the command makes of the same.
    const words: readonly (readonly [string, string, string])[] = [
      ['reading', 'second brake', 'feeler: [1.38 mm, 1.40 mm, 1.39 mm]'],
      ['chosen', 'second brake', 'snap ring 1.80 mm'],
      ['reading', 'second brake', 'again: { fitted: 1.80 mm, read: [1.19 mm, 1.18 mm, 1.19 mm] }'],
      ['reading', 'forward clutch', 'feeler: [1.10 mm, 1.12 mm, 1.11 mm]'],
      ['reading', 'turbine shaft', '0.50 mm, 0.51 mm, 0.52 mm'],
      ['reading', 'main shaft', '0.012 in, 0.013 in, 0.012 in'],
      ['reading', 'stator bushing', 'bore: [38.10 mm], shaft: [38.04 mm]'],
      ['reading', 'intermediate band', 'turns: 1.75'],
    ];
    expect(told).toEqual(words.map((its) => entryTold(its, {})));
    expect(job?.entries.at(-1)?.strikes?.because).toBe('read wrong');

    const asked = openJob({ called: 'unit-7.job.yaml', text });
    const packs = askPacks(KESTREL, { job: asked });
    const ring = packs.judged.find((its) => its.pack.device === 'second brake');
    expect([packs.wrong, ring?.again?.verdict]).toEqual([false, 'inside']);
    expect(askEndPlays(KESTREL, { job: asked }).wrong).toBe(false);
    expect(() => askWear(KESTREL, { job: asked })).toThrow();

    // The sentences of the page are the command's.
    const before = askPacks(KESTREL, {
      readings: { called: 'r', text: 'second brake: { feeler: [1.38 mm, 1.40 mm, 1.39 mm] }' },
    });
    const bare = (its: string) => its;
    const ink = { strong: bare, faint: bare, bad: bare, odd: bare };
    const page80 = { voice: voiceOf('en'), columns: 80, ink } as const;
    const report = flat(packText(KESTREL, before.judged, page80));
    for (const sentence of sentences) expect(report).toContain(flat(sentence).replace(/^! /u, ''));
    expect(complaints).toEqual([]);
  });

  it('is used by keys alone, keeps readings that are in no job, and hands them over', async () => {
    const { page, complaints } = await open();
    await page.getByRole('button', { name: 'Measure', exact: true }).press('Enter');
    await room(page).locator('.tiles button', { hasText: 'turbine shaft' }).press('Enter');
    const number = room(page).locator('.decimal-shown input');
    await number.press('0');
    for (const key of '.50') await page.keyboard.press(key);
    await page.keyboard.press('Enter');
    for (const key of '0,51') await page.keyboard.press(key);
    await page.keyboard.press('Enter');
    expect(await typed(page)).toEqual(['0.50 mm', '0.51 mm']);
    await room(page).getByRole('button', { name: 'Write it down' }).press('Enter');
    await room(page).getByText('Written down.').waitFor();
    await expect.poll(() => room(page).locator('.measure-written li').count()).toBe(1);
    expect(await room(page).textContent()).toContain('No job is open');
    await page.reload();
    await room(page).locator('.measure-written li').waitFor();
    // Another unit is another matter; this one goes on.
    await room(page).getByRole('button', { name: 'All that is measured' }).press('Enter');
    const another = room(page).getByRole('button', { name: 'Another unit…' });
    const away = room(page).getByRole('button', { name: 'Throw away what stands in no job' });
    // A room that has just come back may be made once more, when the jobs of the browser are known.
    await expect
      .poll(async () => {
        if ((await another.getAttribute('aria-pressed')) !== 'true') await another.press('Enter');
        return away.isVisible();
      })
      .toBe(true);
    await another.press('Enter');
    await begin(page);
    await button(page, 'Measure').click();
    await room(page).getByRole('button', { name: 'One thing stands in no job' }).press('Enter');
    await button(page, 'Job').click();
    const { job } = readJob(await textSaved(page));
    expect(job?.entries.map(({ told }) => told)).toEqual([
      entryTold(['reading', 'turbine shaft', '0.50 mm, 0.51 mm'], {}),
    ]);
    expect(complaints).toEqual([]);
  });

  it('puts a limit with its source into the train file, and asks about one far off', async () => {
    const { page } = await open('', TABLET);
    const hands = await measuring(page);
    await hands.go('stator bushing');
    await hands.press('Enter limits');
    await hands.unit('mm');
    await hands.types('0.03', '1.1');
    await room(page).getByLabel('Where it stands').fill('manual p. 12');
    await room(page).getByLabel('Your initials').fill('HT');
    await hands.press('Into the train file');
    expect(await against(page).textContent()).toContain('0.10 mm');
    await hands.press('I mistyped it');
    await hands.types('0.03', '0.11');
    await hands.press('Into the train file');
    await room(page).getByText('Written down.').waitFor();
    await button(page, 'Describe it').click();
    const file = await fileText(page);
    const { train } = readTrain(file);
    expect(train?.wear?.find(({ part }) => part === 'stator bushing')?.limit).toEqual({
      least: '0.03 mm',
      most: '0.11 mm',
      source: 'manual p. 12',
      by: 'HT',
    });
    // Nothing else of the file is touched, and undo takes it back.
    expect(file.split('\n').filter((line) => !TEXT.includes(line))).toHaveLength(1);
    await button(page, 'Undo').click();
    expect(await fileText(page)).toBe(TEXT);
  });

  it('takes a limit and a shelf into this job alone, over a reload, and asks for new plates', async () => {
    const { page } = await open('', TABLET);
    await begin(page);
    await note(page, 'second pack: Linings burnt');
    const hands = await measuring(page);
    await hands.go('turbine shaft');
    await hands.press('Enter limits');
    await hands.unit('mm');
    await hands.types('0.40');
    await room(page).getByLabel('Where it stands').fill('bulletin 3');
    await storesAreQuiet(page);
    await page.reload();
    await expect.poll(() => typed(page)).toEqual(['0.40 mm']);
    await expect
      .poll(() => room(page).getByLabel('Where it stands').inputValue())
      .toBe('bulletin 3');
    await hands.types('0.60');
    await hands.press('Into this job alone');
    await room(page).getByText('Written down.').waitFor();

    await hands.go('second brake');
    await hands.press('Enter the shelf');
    await hands.unit('mm');
    await hands.types('2.00');
    const fitted = room(page).locator('.measure-parts button', { hasText: '2.00 mm' });
    await fitted.tap();
    await storesAreQuiet(page);
    await page.reload();
    await expect.poll(() => fitted.getAttribute('aria-pressed')).toBe('true');
    await hands.press('Into this job alone');
    await room(page).getByText('Written down.').waitFor();
    await hands.press('Readings');
    await hands.types('1.38', '1.40', '1.39');
    await expect.poll(() => against(page).textContent()).toContain('were found burnt');
    await hands.press('New ones are in: write it down');
    await expect.poll(() => against(page).count()).toBe(0);
    // What was read before is of the plates that went.
    await expect.poll(() => room(page).locator('.measure-struck').count()).toBe(3);
    await hands.types('1.38', '1.40', '1.39');
    await expect.poll(() => against(page).count()).toBe(0);
    expect(await parts(page).count()).toBe(4);

    await button(page, 'Job').click();
    const text = await textSaved(page);
    const told = readJob(text).job?.entries.map((its) => its.told) ?? [];
    const row = 'part: snap ring, fitted: 2.00 mm, sizes: [1.40 mm, 1.60 mm, 1.80 mm, 2.00 mm]';
    expect(told.slice(1)).toEqual([
      entryTold(['limit', 'turbine shaft', 'least: 0.40 mm, most: 0.60 mm, source: bulletin 3'], {
        by: 'TW',
      }),
      entryTold(['shelf', 'second brake', row], {}),
      entryTold(['installed', 'second brake', 'replaced'], {}),
    ]);
    // The file is as it was, and the command judges by the job.
    const asked = openJob({ called: 'unit-7.job.yaml', text });
    const train = asked.withLimits(KESTREL);
    expect(train.packs?.find(({ device }) => device === 'second brake')?.shelf?.sizes).toHaveLength(
      4,
    );
    expect(train.endPlays?.[0]?.limit?.most).toBe('0.60 mm');
    await button(page, 'Describe it').click();
    expect(await fileText(page)).toBe(TEXT);
  });

  it('says so where the browser keeps nothing, and goes on', async () => {
    const { page } = await open('', TABLET);
    await page.addInitScript(() => {
      Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
    });
    await page.reload();
    const hands = await measuring(page);
    await hands.go('turbine shaft');
    await hands.unit('mm');
    await hands.types('0.50', '0.51');
    expect(await room(page).textContent()).toContain('This browser keeps nothing');
    await hands.press('Write it down');
    await expect.poll(() => room(page).locator('.measure-written li').count()).toBe(1);
  });

  it('drops no sign in silence, and does not press for what it asks about', async () => {
    const { page } = await open('', TABLET);
    const hands = await measuring(page);
    await hands.go('turbine shaft');
    await hands.unit('mm');
    const box = room(page).locator('.decimal-shown input');
    await box.pressSequentially('-0.4');
    expect(await box.inputValue()).toBe('-0.4');
    expect(await room(page).locator('.decimal-below').textContent()).toContain('below nothing');
    expect(await button(page, 'Add this reading').isDisabled()).toBe(true);
    await box.fill('');
    // Two digits exchanged: asked about, and put right by one press.
    await hands.types('0.50', '0.51', '0.15');
    await against(page)
      .getByRole('button', { name: /^It was 0\.51 mm: / })
      .tap();
    expect((await typed(page)).at(-1)).toBe('0.51 mm');
    expect(await against(page).count()).toBe(0);
    await hands.types('0.5');
    const write = button(page, 'Write it down');
    await expect.poll(() => write.getAttribute('class')).toContain('large-main');
    await hands.types('999');
    await expect.poll(() => against(page).textContent()).toContain('not possible');
    expect(await write.getAttribute('class')).not.toContain('large-main');
    expect(await room(page).locator('.measure-verdict').count()).toBe(0);
  }, 60_000);

  it('speaks Spanish, in the command’s words', async () => {
    const { page } = await open('', { ...TABLET, locale: 'es-ES' });
    await page.getByRole('button', { name: 'Medir', exact: true }).tap();
    const place = page.getByRole('region', { name: 'Medir' });
    await place.locator('.tiles button', { hasText: 'casquillo del estator' }).tap();
    await place.locator('.measure-ways > button').tap();
    await place.getByRole('button', { name: 'leído directamente' }).tap();
    for (const key of ['0', 'Punto decimal', '1', '5']) {
      await place.getByRole('button', { name: key, exact: true }).tap();
    }
    await place.getByRole('button', { name: 'Añadir esta lectura' }).tap();
    const readings = { called: 'r', text: 'stator bushing: { read: [0.15 mm] }' };
    const [judged] = askWear(KESTREL, { readings }).judged;
    expect(judged?.verdict).toBe('too big');
    expect(await place.locator('.measure-says').textContent()).toContain('casquillo');
    expect(await accessFaults(page)).toEqual([]);
  });
});

async function fileText(page: Page): Promise<string> {
  return readFileSync(await (await saved(page, 'Save')).path(), 'utf8');
}
