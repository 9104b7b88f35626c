import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { readJob } from '../../src/shop/records/index.ts';
import { heldOnBy } from '../../src/shop/strip/index.ts';
import { ROOT } from '../sources.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { button, cannotRead } from './jobs.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const folder = mkdtempSync(path.join(tmpdir(), 'holdturn-strip-'));
afterAll(() => rmSync(folder, { recursive: true }));

const TABLET = { viewport: { width: 820, height: 1180 }, hasTouch: true };
const KESTREL = readTrain(ourText('kestrel-three-speed')).train as Train;
const PARTS = KESTREL.teardown?.map(({ name }) => name) ?? [];

const title = (page: Page) => page.locator('#strip-part').textContent();
const count = (page: Page) => page.locator('.strip-ways [role="status"]').textContent();
const command = (...words: string[]) =>
  execFileSync(process.execPath, [path.join(ROOT, 'dist/cli.cjs'), ...words], {
    encoding: 'utf8',
    cwd: folder,
  });

// An invented unit of invented people.
async function begin(page: Page): Promise<void> {
  await button(page, 'Begin a job…').click();
  await page.getByLabel('Your initials').fill('TW');
  await button(page, 'Begin a job').click();
  await button(page, /^Job: /u).waitFor();
}

const UNREAD = ['turbine shaft', 'main shaft'].map((name) => {
  return `could not be read: ${name}, because it came in apart`;
});

async function jobText(page: Page): Promise<string> {
  await button(page, 'Job').click();
  await page.evaluate(() => delete (window as { showSaveFilePicker?: unknown }).showSaveFilePicker);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    button(page, 'Save the job to disk').first().click(),
  ]);
  return readFileSync(await download.path(), 'utf8');
}

// Whatever has the focus after as many tabs as it takes.
async function byKeys(page: Page, name: RegExp): Promise<void> {
  for (let tabs = 0; tabs < 150; tabs++) {
    await page.keyboard.press('Tab');
    const text = await page.evaluate(() => document.activeElement?.textContent ?? '');
    if (!name.test(text)) continue;
    await page.keyboard.press('Enter');
    return;
  }
  throw new Error(`no ${name} by keys`);
}

describe('a unit of ours, stripped on the page', () => {
  it('by touch, every part with what it was found to be; a reload comes back', async () => {
    const { page, complaints } = await open('', TABLET);
    await button(page, 'Strip it').tap();
    await begin(page);
    await cannotRead(page);
    for (const [i, name] of PARTS.entries()) {
      await expect.poll(() => title(page)).toBe(`${i + 1}. ${name}`);
      await button(page, 'It is off').tap();
      const found = name === 'front carrier' ? 'Pins loose' : 'Sound';
      await button(page, found).tap();
      await expect.poll(() => button(page, found).getAttribute('aria-pressed')).toBe('true');
      await expect.poll(() => count(page)).toBe(`${i + 1} of 24 parts are off.`);
      if (i === 11) {
        await page.reload();
        await button(page, 'Strip it').tap();
        await expect.poll(() => title(page)).toBe(`${i + 1}. ${name}`);
        expect(await count(page)).toBe('12 of 24 parts are off.');
      }
      await button(page, 'Next part').tap();
    }
    await page.getByText('Every part is off.').waitFor();

    // Entries as the command would write them: the same lines, but for the clock.
    const text = await jobText(page);
    const { job, problems } = readJob(text);
    expect(problems).toEqual([]);
    const all = job?.entries.map((entry) => entry.told) ?? [];
    const notes = all.flatMap((its) => (its?.kind === 'note' ? [its.note] : []));
    expect(all.flatMap((its) => (its?.kind === 'removed' ? [its.part] : []))).toEqual(PARTS);
    const told = PARTS.map((name) => {
      return `${name}: ${name === 'front carrier' ? 'Pins loose' : 'Sound'}`;
    });
    expect(notes).toEqual([...UNREAD, ...told]);
    command('job', 'new', 'a.job.yaml', '--unit', 'a', '--by', 'TW');
    const first = job?.entries.find(
      (entry) => entry.told?.kind === 'note' && entry.told.note === 'pump: Sound',
    );
    command(
      'job',
      'add',
      'a.job.yaml',
      'note',
      'pump: Sound',
      '--by',
      'TW',
      '--time',
      first?.at ?? '',
    );
    const line = readFileSync(path.join(folder, 'a.job.yaml'), 'utf8').trim().split('\n').at(-1);
    expect(text.split('\n')).toContain(line);
    expect(complaints).toEqual([]);
  });

  it('asks of a part that was found faulty, before it goes on again, and keeps that in sight', async () => {
    const { page } = await open('', TABLET);
    await button(page, 'Strip it').tap();
    await begin(page);
    await cannotRead(page);
    await button(page, 'It is off').tap();
    await button(page, 'Sound').tap();
    await expect.poll(() => button(page, 'Sound').getAttribute('aria-pressed')).toBe('true');
    // What is wrong takes the place of "sound", and a second press is none.
    await button(page, 'Bushing worn').tap();
    await expect.poll(() => button(page, 'Bushing worn').getAttribute('aria-pressed')).toBe('true');
    await button(page, 'Bushing worn').tap();
    expect(await button(page, 'Sound').getAttribute('aria-pressed')).toBe('false');
    expect(await button(page, 'Sound').isDisabled()).toBe(true);
    await button(page, 'Put it together').tap();
    await page.locator('.strip-faulty').waitFor();
    expect(await page.locator('.strip-faulty').textContent()).toContain('Bushing worn');
    expect(await button(page, 'It is on').count()).toBe(0);
    await button(page, 'The same is on again…').tap();
    await page.locator('.strip-why input').fill('within the book');
    await page.keyboard.press('Enter');
    await expect.poll(() => count(page)).toBe('0 of 24 parts are off.');
    await page.locator('.part[data-name="pump"] .part-figure').tap();
    const faulty = () => page.locator('.strip-faulty').textContent();
    await expect.poll(faulty).toContain('The same is on again: within the book.');
    await button(page, 'It is off').tap();
    await button(page, 'A new one is on').tap();
    await expect.poll(faulty).toBe('It was found: Bushing worn. A new one is on.');
    expect(await accessFaults(page)).toEqual([]);
    const { job } = readJob(await jobText(page));
    const told = job?.entries.map((entry) => [entry.told, entry.strikes?.because]);
    expect(told).toEqual([
      ...UNREAD.map((note) => [{ kind: 'note', note }, undefined]),
      [{ kind: 'removed', part: 'pump' }, undefined],
      [{ kind: 'note', note: 'pump: Sound' }, undefined],
      [{ kind: 'note', note: 'pump: Bushing worn' }, 'found more on looking'],
      [{ kind: 'installed', part: 'pump', why: 'within the book' }, undefined],
      [{ kind: 'removed', part: 'pump' }, undefined],
      [{ kind: 'installed', part: 'pump', replaced: true }, undefined],
    ]);
  });

  it('counts plates anew, keeps what is half typed, and shows what was fitted wrongly', async () => {
    const { page } = await open('', TABLET);
    await button(page, 'Strip it').tap();
    await begin(page);
    await cannotRead(page);
    const show = async (name: string) => {
      await page.locator('.strip-list summary').tap();
      await button(page, new RegExp(`^\\d+\\. ${name} `, 'u')).tap();
      await page.locator('.strip-list summary').tap();
    };
    for (let i = 0; i < 13; i++) {
      await button(page, 'It is off').tap();
      await expect.poll(() => count(page)).toBe(`${i + 1} of 24 parts are off.`);
      await button(page, 'Next part').tap();
    }
    await show('second pack');
    await button(page, 'Counted otherwise…').tap();
    for (const key of ['2', 'Next', '3', 'Next']) {
      await page.locator('.strip-counting').getByRole('button', { name: key, exact: true }).tap();
    }
    const told =
      'Counted otherwise: 2 frictions, 3 steels; the file says 3 and 3: ' +
      'the stack is thinner by 2.00 mm (0.0787 in), so the clearance is larger by as much';
    const faulty = page.locator('.strip-faulty');
    const flat = async () => (await faulty.textContent())?.replaceAll('\u00A0', ' ');
    await expect.poll(flat).toContain(told);
    await show('roller cage');
    await button(page, 'Something else…').tap();
    await page.locator('.name-entry').fill('one roller is sho');
    await page.reload();
    await expect.poll(() => page.locator('.name-entry').inputValue()).toBe('one roller is sho');
    await button(page, 'Was fitted the wrong way round').tap();
    await button(page, 'Was fitted the wrong way round: see what that does').tap();
    await page.locator('.builds-wrong').waitFor();
    expect(await page.locator('.builds-wrong').textContent()).toContain('second roller');
  });

  it('tells first what is read and what can hurt, then torques, snap rings and selective parts', async () => {
    const { page } = await open('', TABLET);
    await button(page, 'Strip it').tap();
    await begin(page);
    const before = page.locator('.strip-before');
    await expect.poll(() => before.textContent()).toContain('turbine shaft');
    expect(await before.textContent()).toMatch(/hot.*hoist.*[Ss]prings/su);
    const card = page.locator('.strip-card');
    expect(await card.textContent()).toContain('8 bolts to 23\u00A0N·m');
    expect(await card.textContent()).toContain('crosswise, in three rounds');
    // A stop: it is read, or somebody says why not.
    expect(await button(page, 'It is off').isDisabled()).toBe(true);
    expect(await card.locator('.strip-refused').textContent()).toMatch(/^Stop: turbine shaft and/u);
    await button(page, 'Measure: turbine shaft').tap();
    await page.locator('.measure-head').waitFor();
    for (const key of ['0', 'Decimal point', '5']) await button(page, key).tap();
    await button(page, 'Add this reading').tap();
    await button(page, 'Write it down').tap();
    await page.getByText('Written down.').waitFor();
    await button(page, '‹ Back to the teardown').tap();
    await expect.poll(() => card.locator('.strip-refused').textContent()).toMatch(/^Stop: main/u);
    await button(page, 'It could not be read, because…').tap();
    await page.locator('.strip-why input').fill('its end is broken');
    await page.keyboard.press('Enter');
    await button(page, 'It is off').tap();
    await before.waitFor({ state: 'detached' });
    await page.locator('.part[data-name="carrier snap ring"] .part-figure').tap();
    await expect.poll(() => card.textContent()).toContain('Springs: the compressor square on');
    await page.locator('.part[data-name="shell washer"] .part-figure').tap();
    await expect.poll(() => card.textContent()).toContain('Not chosen yet: it sets main shaft.');
    await card.getByRole('button', { name: 'To its measure' }).tap();
    await expect.poll(() => page.locator('.measure-head h2').textContent()).toBe('main shaft');
    const { job } = readJob(await jobText(page));
    expect(job?.entries.map((its) => its.told)).toContainEqual({
      kind: 'note',
      note: 'could not be read: main shaft, because its end is broken',
    });
  });

  it('is refused what something covers, with its name, and what is not under yet', async () => {
    const { page } = await open('', TABLET);
    await button(page, 'Strip it').tap();
    await cannotRead(page);
    await page.locator('.strip-list summary').tap();
    for (const name of ['second pack', 'roller cage', 'direct drum']) {
      await button(page, new RegExp(`^\\d+\\. ${name} `, 'u')).tap();
      const part = KESTREL.teardown?.find((its) => its.name === name);
      const over = part && heldOnBy({ teardown: KESTREL.teardown ?? [], off: new Set() }, part);
      const alert = page.locator('.strip-refused');
      await expect.poll(() => alert.textContent()).toContain(over?.[0] ?? 'nothing');
      expect(await button(page, 'It is off').isDisabled()).toBe(true);
      expect(await page.locator(`.part.refused[data-name="${name}"]`).count()).toBe(1);
    }
    // A part is shown by touching it in the row.
    await page.locator('.part[data-name="pump"] .part-figure').tap();
    await expect.poll(() => title(page)).toBe('1. pump');
    await button(page, 'It is off').tap();
    await button(page, 'Next part').tap();
    await button(page, 'It is off').tap();
    await button(page, 'Put it together').tap();
    await page.locator('.part[data-name="pump"] .part-figure').tap();
    await expect
      .poll(() => page.locator('.strip-refused').textContent())
      .toBe('Not yet: pump gasket goes under it, and is still off.');
    expect(await accessFaults(page)).toEqual([]);
  });

  it('by keys alone, and together again', async () => {
    const { page } = await open();
    await byKeys(page, /^Strip it$/u);
    await cannotRead(page);
    for (let i = 0; i < 3; i++) {
      await byKeys(page, /^It is off$/u);
      await byKeys(page, /^Next part$/u);
    }
    await expect.poll(() => count(page)).toBe('3 of 24 parts are off.');
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await byKeys(page, /^Put it together$/u);
    await expect.poll(() => title(page)).toBe('3. front thrust washer');
    for (let i = 0; i < 3; i++) {
      await byKeys(page, /^It is on$/u);
      await byKeys(page, /^Next part$/u);
    }
    await page.getByText('Every part is on.').waitFor();
  });

  it('has buttons for gloves, and speaks Spanish', async () => {
    const { page } = await open('', { ...TABLET, locale: 'es-ES' });
    await page
      .getByText(/^(?:View|Ver|Vista)/u)
      .first()
      .click();
    await page.getByLabel(/Language|Idioma/u).selectOption('es');
    await button(page, 'Desarmar').click();
    await button(page, 'Medir: eje de turbina').waitFor();
    for (const _ of UNREAD) {
      await button(page, 'No se pudo leer, porque…').first().tap();
      await button(page, 'llegó desarmada').tap();
    }
    await button(page, 'Está fuera').tap();
    const heights = await page.locator('button.large').evaluateAll((all) => {
      return all
        .map((one) => one.getBoundingClientRect())
        .filter(({ width }) => width > 0)
        .map(({ width, height }) => [width, height]);
    });
    expect(Math.min(...heights.flat())).toBeGreaterThanOrEqual(72);
    await expect.poll(() => count(page)).toBe('1 de 24 piezas están fuera.');
    expect(await page.locator('.strip').textContent()).not.toMatch(/\b(?:off|next|found|part)\b/iu);
    expect(await accessFaults(page)).toEqual([]);
  });
});

// A unit described here, whose file does not tell how it comes apart.
const STAND = `holdturn: 1
name: One set on a stand
input: crank
output: flange
sets:
  set: { sun: 30, ring: 66, planets: 3 }     # counted twice
joined: { crank: [set.sun], flange: [set.carrier] }
devices:
  ring brake: { brake: set.ring }
  ring sprag: { one-way: [set.ring, case], lets: clockwise }
ranges:
  L: { "1": [ring brake] }
`;

describe('a teardown made as one goes', () => {
  it('is written into the file part by part, survives a reload, and can be undone', async () => {
    const { page, complaints } = await open(linkTo(STAND), TABLET);
    await button(page, 'Strip it').tap();
    const named = async (text: string) => {
      await page.locator('.name-entry').fill(text);
      await button(page, 'Next').tap();
    };
    const skip = () => button(page, 'Leave it out').tap();
    const asked = (text: RegExp) =>
      expect.poll(() => page.locator('#strip-asked').textContent()).toMatch(text);

    await asked(/What came off/u);
    await named('brake pack');
    await button(page, 'ring brake').tap();
    await button(page, 'Next').tap();
    await button(page, 'The input end').tap();
    await named('splines of the ring');
    // Half told, and the browser is closed and opened again.
    await page.reload();
    await button(page, 'Strip it').tap();
    await asked(/engage outside/u);
    await named('lugs in the case');
    await skip();
    await skip();
    for (const number of ['3', '4']) {
      await button(page, number).tap();
      await button(page, 'Next').tap();
    }
    await button(page, 'A new one').tap();
    await asked(/^brake pack: this goes into the file$/u);
    await button(page, 'Write it into the file').tap();
    await asked(/What came off/u);

    await named('sun shaft');
    await button(page, 'set sun').tap();
    await button(page, 'Next').tap();
    await skip();
    await skip();
    await named('the splines');
    await button(page, 'To the input').tap();
    await skip();
    await button(page, 'The same').tap();
    await button(page, 'Write it into the file').tap();
    await asked(/What came off/u);
    await button(page, 'That is all that came off').tap();
    await expect.poll(() => title(page)).toBe('1. brake pack');
    expect(await accessFaults(page)).toEqual([]);

    await button(page, 'Describe it').tap();
    await button(page, 'As text').tap();
    const text = await page
      .locator('.cm-content')
      .evaluate((its) => (its as HTMLElement).innerText);
    const told = readTrain(`${text.replaceAll('\u00a0', ' ')}\n`).train;
    expect(told?.teardown).toEqual([
      {
        name: 'brake pack',
        carries: ['ring brake'],
        up: 'input',
        inner: 'splines of the ring',
        outer: 'lugs in the case',
        frictions: 3,
        steels: 4,
        refit: 'replace',
      },
      {
        name: 'sun shaft',
        carries: ['set.sun'],
        face: 'the splines',
        faces: 'input',
        refit: 'reuse',
      },
    ]);
    expect(text).toContain('# counted twice');
    // What the page wrote, the command builds by.
    writeFileSync(path.join(folder, 'stand.train.yaml'), text);
    expect(command('plan', 'stand.train.yaml')).toContain('brake pack');

    await button(page, 'Undo').tap();
    await button(page, 'Strip it').tap();
    await expect.poll(() => count(page)).toBe('0 of 1 parts are off.');
    expect(complaints).toEqual([]);
  });
});
