import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { flow } from '../../src/engine/flow/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const KESTREL = readTrain(ourText('kestrel-three-speed')).train as Train;

const sheet = (page: Page) => page.getByRole('region', { name: 'Describe the train' });
const question = (page: Page) => page.locator('.describe-question');
const inAsk = (page: Page, name: string) =>
  page.locator('.describe-ask').getByRole('button', { name, exact: true });

async function fromNothing(): Promise<Page> {
  const { page } = await open();
  await page.getByText('File', { exact: true }).click();
  await page.getByRole('button', { name: 'New, from nothing' }).click();
  await sheet(page).waitFor();
  return page;
}

/** A person who answers by touch: the question must be the one that is expected. */
class Hands {
  private readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  async hears(words: string): Promise<void> {
    await question(this.page).filter({ hasText: words }).waitFor();
  }

  async pick(...names: string[]): Promise<void> {
    for (const name of names) await inAsk(this.page, name).click();
  }

  async names(name: string): Promise<void> {
    await this.page.getByRole('textbox', { name: 'Its name' }).fill(name);
    await this.pick('Next');
  }

  async counts(number: number): Promise<void> {
    await this.pick(...`${number}`, 'Next');
  }

  async set(name: string): Promise<void> {
    await this.hears('A planetary set');
    await this.names(name);
    await this.hears('between the sun and the ring');
    await this.pick('One planet: it meshes both');
    await this.counts(36);
    await this.counts(84);
    await this.hears('how many planets');
    await this.counts(3);
    await this.pick('I cannot count it');
  }

  async device(kind: RegExp, name: string): Promise<void> {
    await this.hears('What holds or joins parts?');
    await this.page.locator('.describe-ask').getByRole('button', { name: kind }).click();
    await this.names(name);
  }

  async gear(range: string, gear: string, on: readonly string[], isFirst: boolean): Promise<void> {
    await this.hears('position of the selector');
    if (isFirst) await this.names(range);
    else await this.pick(range);
    await this.names(gear);
    await this.hears('what is applied');
    await this.pick(...on, 'Next');
  }
}

async function textOf(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'As text' }).click();
  await page.locator('.cm-content').waitFor();
  const lines = await page
    .locator('.cm-line')
    .evaluateAll((all) => all.map((one) => one.textContent));
  return lines.join('\n');
}

function ratio(train: Train, on: readonly string[]): unknown {
  return flow(train, on).drive.ratio;
}

describe('describing a train by questions', { timeout: 120_000 }, () => {
  it('goes on after a reload where a round was half answered', async () => {
    const page = await fromNothing();
    const hands = new Hands(page);
    await hands.names('Twin');
    await hands.names('turbine shaft');
    await hands.names('counter gear');
    await hands.hears('A planetary set');
    await hands.names('front');
    await hands.pick('One planet: it meshes both');
    await hands.counts(36);
    const asked = await question(page).textContent();
    await page.reload();
    await sheet(page).waitFor();
    expect(await question(page).textContent()).toBe(asked);
    await hands.counts(84);
    await hands.counts(3);
    await hands.pick('I cannot count it');
    expect(await textOf(page)).toContain('front: { sun: 36, ring: 84, planets: 3 }');
  });

  it('leads from an empty page to a train that turns like the Kestrel', async () => {
    const page = await fromNothing();
    const hands = new Hands(page);
    await hands.hears('What do you call this train?');
    await hands.names('Twin');
    await hands.hears('comes in');
    await hands.names('turbine shaft');
    await hands.hears('goes out');
    await hands.names('counter gear');
    await hands.set('front');
    await hands.pick('Yes');
    await hands.set('rear');
    await hands.pick('No, that is all');
    await hands.hears('What is the turbine shaft splined');
    await hands.pick('Nothing');
    await hands.hears('What is the counter gear splined');
    await hands.pick('front carrier', 'rear ring', 'Next');
    await hands.hears('What is the front sun splined');
    await hands.pick('rear sun', 'Next');
    await hands.names('sun shell');
    await hands.hears('What is the front ring splined');
    await hands.pick('Nothing');
    await hands.hears('What is the rear carrier splined');
    await hands.pick('Nothing');
    await hands.device(/^A plate clutch/u, 'forward clutch');
    await hands.pick('turbine shaft', 'front ring', 'Yes');
    await hands.device(/^A plate clutch/u, 'direct clutch');
    await hands.pick('turbine shaft', 'sun shell', 'Yes');
    await hands.device(/^A plate brake/u, 'second brake');
    await hands.pick('Another part, not in the list…');
    await hands.names('second race');
    await hands.pick('Yes');
    await hands.device(/^A one-way clutch/u, 'second roller');
    await hands.pick('sun shell', 'second race');
    await hands.hears('Which way does the inner race turn freely?');
    await hands.pick('Clockwise', 'Yes');
    await hands.device(/^A one-way clutch/u, 'low sprag');
    await hands.pick('rear carrier', 'case');
    // Seen from the other end it is the other way.
    await page.getByLabel('I look from the output end').check();
    await hands.pick('Anticlockwise', 'Yes');
    await hands.device(/^A plate brake/u, 'low brake');
    await hands.pick('rear carrier', 'No, that is all');
    await hands.gear('D', '1', ['forward clutch'], true);
    await hands.pick('Yes');
    await hands.gear('D', '2', ['forward clutch', 'second brake'], false);
    await hands.pick('No, that is all');
    await hands.hears('All is asked');
    const { train, problems } = readTrain(await textOf(page));
    expect(problems).toEqual([]);
    for (const on of [
      ['forward clutch'],
      ['forward clutch', 'second brake'],
      ['direct clutch', 'low brake'],
    ]) {
      expect(ratio(train as Train, on)).toEqual(ratio(KESTREL, on));
    }
    expect(train?.devices.find(({ name }) => name === 'low sprag')).toMatchObject({
      lets: 'clockwise',
    });
  });

  it('changes, renames and removes what is described, and the comments stay', async () => {
    const { page } = await open(linkTo(ourText('kestrel-three-speed')));
    await page.getByRole('button', { name: 'Describe it' }).click();
    const thing = (name: string) =>
      page.locator('.describe-things summary').filter({ hasText: name });
    const does = (name: RegExp) => page.getByRole('button', { name }).filter({ visible: true });
    await thing('front sun 36').click();
    await does(/^Change$/u).click();
    const hands = new Hands(page);
    await hands.pick('One planet: it meshes both', 'Next');
    await hands.hears('count the teeth of the ring');
    await page.getByRole('button', { name: 'One more' }).click();
    await hands.pick('Next', 'Next', 'I cannot count it');
    await expect.poll(() => thing('front sun 36').textContent()).toContain('ring 85');
    await expect
      .poll(() => page.locator('.describe-warning').first().textContent())
      .toContain('= 121');
    await thing('low brake plate brake').click();
    await does(/^Rename$/u).click();
    await page.getByRole('textbox', { name: 'New name' }).fill('reverse brake');
    await page.getByRole('button', { name: 'Done' }).click();
    await thing('intermediate band band round').click();
    await does(/^Remove$/u).click();
    await expect.poll(() => thing('intermediate band').count()).toBe(0);
    const text = await textOf(page);
    const wanted = ourText('kestrel-three-speed')
      .replace('sun: 36, ring: 84', 'sun: 36, ring: 85')
      .replaceAll('low brake', 'reverse brake')
      .replaceAll(/^ {2}intermediate band: .*\n/gmu, '')
      .replace('carries: [intermediate band]', 'carries: []')
      .replace('second brake, intermediate band]', 'second brake]');
    expect(text).toBe(wanted.slice(0, text.length));
    expect(text).toContain('# planets of 24, both sets');
  });

  it('says that a text is broken, and leads to the place', async () => {
    const text = ourText('kestrel-three-speed').replace(
      '[front.sun, rear.sun]',
      '[front.sun, rear.sun',
    );
    const { page } = await open(linkTo(text));
    await page.getByRole('button', { name: 'Describe it' }).click();
    await page.getByRole('button', { name: 'Show it in the text' }).click();
    await expect.poll(() => page.locator('.cm-activeLine').textContent()).toContain('sun shell');
  });
});

describe('describing a train by its text', { timeout: 60_000 }, () => {
  const offered = (page: Page, name: string) =>
    page.locator('.cm-tooltip-autocomplete li').filter({ hasText: name }).first();

  it('offers what can come next, from an empty page to a train', async () => {
    const page = await fromNothing();
    await page.getByRole('button', { name: 'As text' }).click();
    await page.locator('.cm-content').click();
    const type = (text: string) => page.keyboard.type(text);
    const take = (name: string) => offered(page, name).click();
    const line = async (out = false) => {
      await page.keyboard.press('End');
      await type('\n');
      if (out) await page.keyboard.press('Shift+Tab');
    };
    await type('hol');
    await take('holdturn');
    await take('1');
    await type('\ninp');
    await take('input');
    await type('shaft');
    await page.keyboard.press('Escape');
    await type('\nout');
    await take('output');
    await type('drum');
    await page.keyboard.press('Escape');
    await type('\nse');
    await take('sets');
    await type('main: ');
    await take('{ sun: …, ring: … }');
    await type('30');
    await page.keyboard.press('Tab');
    await type('66');
    await line(true);
    await type('joi');
    await take('joined');
    await take('shaft');
    await take('[…]');
    await take('main.sun');
    await line();
    await type('dr');
    await take('drum');
    await take('[…]');
    await take('main.carrier');
    await line(true);
    await type('dev');
    await take('devices');
    await type('low: ');
    await take('{ brake: … }');
    await type('main.r');
    await take('main.ring');
    const { train, problems } = readTrain(await textOf(page));
    expect(problems).toEqual([]);
    expect(train).toMatchObject({ input: 'shaft', output: 'drum', sets: [{ sun: 30, ring: 66 }] });
    await expect.poll(() => sheet(page).textContent()).toContain('Nothing is wrong');
  });

  it('tells a mistake under the text and in a list that leads there; undo is the page’s', async () => {
    const { page } = await open(linkTo(ourText('wren-plain-set')));
    await page.getByRole('button', { name: 'Describe it' }).click();
    const before = await textOf(page);
    await page.locator('.cm-content').click();
    await page.keyboard.press('Control+Home');
    await page.keyboard.type('rnig: 3');
    await expect.poll(() => page.locator('.cm-lintRange-error').count()).toBeGreaterThan(0);
    const problem = page.locator('.describe-problems button').first();
    await expect.poll(() => problem.textContent()).toContain('Line 1');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+z');
    expect(await textOf(page)).toBe(before);
    await page.locator('.cm-content').click();
    // The first puts away what may be offered.
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.closest('.cm-editor'))).toBeNull();
  });
});

describe('describing', () => {
  it.each([
    { width: 360, height: 740 },
    { width: 820, height: 1180 },
    { width: 1400, height: 900 },
  ])('is accessible, fits and has large targets at $width px', async (viewport) => {
    const { page, complaints } = await open(linkTo(ourText('kestrel-three-speed')), { viewport });
    await page.getByRole('button', { name: 'Describe it' }).click();
    await sheet(page).waitFor();
    for (const way of ['By questions', 'As text']) {
      await page.getByRole('button', { name: way }).click();
      await page.locator(way === 'As text' ? '.cm-content' : '.describe-sofar').waitFor();
      expect(await accessFaults(page)).toEqual([]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      const small = await sheet(page)
        .locator('button, input, summary')
        .evaluateAll((all) =>
          all.flatMap((one) => {
            const { width, height } = one.getBoundingClientRect();
            return width > 0 && Math.min(width, height) < 44 ? [one.textContent] : [];
          }),
        );
      expect(small).toEqual([]);
    }
    expect(complaints).toEqual([]);
  });
});
