import { readFileSync } from 'node:fs';
import { unzipSync, zipSync } from 'fflate';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { entryText, hashOf, newJobText, readJob } from '../../src/shop/records/index.ts';
import { withBrowser } from './browser.ts';
import { begin, button, gives, note, noticed, said, saved, textSaved } from './jobs.ts';
import { ourText } from './links.ts';
import { jpegWithPlace, segmentsOf } from './photographs.ts';

const open = withBrowser();

// An invented job of invented people.
const at = '2026-11-25T08:00:00.000Z';
const HEADER = newJobText({ unit: 'bench 4', complaint: 'slips when hot', by: 'HT', at });
const entry = (minute: number, text: string) =>
  entryText({
    at: at.replace(':00:', `:${minute}:`),
    who: 'HT',
    told: { kind: 'note', note: text },
  }).text;
const textIn = (file: Uint8Array | undefined) => new TextDecoder().decode(file);

async function toJob(page: Page): Promise<void> {
  await button(page, 'Job').click();
  await page.getByLabel('Your initials').fill('TW');
}

describe('a job from disk', () => {
  it('opens with its entries, takes in a colleague’s copy, and tells how much came', async () => {
    const { page, complaints } = await open();
    await toJob(page);
    const mine = HEADER + entry(10, 'one');
    await gives(page, 'Open a job from disk…', 'bench-4.job.yaml', mine);
    await noticed(page).toContain('bench-4.job.yaml is open.');
    expect(await said(page)).toEqual(['one']);
    await note(page, 'two');
    const theirs = mine + entry(20, 'three') + entry(30, 'four');
    await gives(page, 'Take in a colleague’s copy…', 'from-ht.job.yaml', theirs);
    await noticed(page).toContain('Lines that came in: 2.');
    expect(await said(page)).toEqual(['one', 'three', 'four', 'two']);
    await gives(page, 'Take in a colleague’s copy…', 'from-ht.job.yaml', theirs);
    await noticed(page).toContain('nothing that is not here');
    const { job, problems } = readJob(await textSaved(page));
    expect([job?.unit, job?.entries.length, problems]).toEqual(['bench 4', 4, []]);
    expect(await page.locator('.jobs-list li').count()).toBe(1);
    expect(complaints).toEqual([]);
  });

  it('keeps what of it cannot be read, and tells how much that is', async () => {
    const { page } = await open();
    await toJob(page);
    const spoilt = `${HEADER}${entry(10, 'one')}${entry(20, 'two').replace('two', 'ten')}- { at: 2026\n`;
    await gives(page, 'Open a job from disk…', 'bench-4.job.yaml', spoilt);
    await noticed(page).toContain('kept as they are: 2.');
    expect(await said(page)).toEqual(['one']);
    const text = await textSaved(page);
    for (const line of spoilt.split('\n')) expect(text.split('\n')).toContain(line);
  });

  it.each([
    ['a train', ourText('wren-plain-set'), 'is no job'],
    ['a picture', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0x00]), 'neither a job nor a zip'],
    ['a zip of something else', zipSync({ 'a.txt': [Buffer.from('a'), {}] }), 'neither a job nor'],
    ['a zip that was cut', Buffer.from('PK\u0003\u0004 half'), 'neither a job nor a zip'],
  ])('is refused where it is %s, and the open one stays', async (_, its, says) => {
    const { page, complaints } = await open();
    await begin(page);
    await note(page, 'one');
    await gives(page, 'Open a job from disk…', 'odd.yaml', its);
    await noticed(page).toContain(says);
    expect(await said(page)).toEqual(['one']);
    expect(complaints).toEqual([]);
  });

  it('is written to as entries come, and never over what somebody else wrote there', async () => {
    const { page } = await open();
    await toJob(page);
    // A file that the page may write, in the folder that the browser keeps for it.
    await page.evaluate(async (text) => {
      const folder = await navigator.storage.getDirectory();
      const handle = await folder.getFileHandle('bench-4.job.yaml', { create: true });
      const stream = await handle.createWritable();
      await stream.write(text);
      await stream.close();
      Object.assign(window, { showOpenFilePicker: async () => [handle] });
    }, HEADER);
    const disk = () =>
      page.evaluate(async () => {
        const folder = await navigator.storage.getDirectory();
        return (await (await folder.getFileHandle('bench-4.job.yaml')).getFile()).text();
      });
    await button(page, 'Open a job from disk…').click();
    await noticed(page).toContain('bench-4.job.yaml on disk has all of it.');
    await note(page, 'one');
    await expect.poll(disk).toContain('note: one');
    const theirs = `${entry(20, 'of somebody else')}- { half\n`;
    await page.evaluate(async (line) => {
      const folder = await navigator.storage.getDirectory();
      const handle = await folder.getFileHandle('bench-4.job.yaml');
      const { size } = await handle.getFile();
      const stream = await handle.createWritable({ keepExistingData: true });
      await stream.write({ type: 'write', position: size, data: line });
      await stream.close();
    }, theirs);
    await note(page, 'two');
    await expect.poll(() => said(page)).toEqual(['of somebody else', 'one', 'two']);
    await expect.poll(disk).toContain('note: two');
    expect(await disk()).toContain(theirs);
    expect(readJob(await disk()).job?.entries).toHaveLength(3);
    // Something else in its place is left alone.
    await page.evaluate(async () => {
      const folder = await navigator.storage.getDirectory();
      const stream = await (await folder.getFileHandle('bench-4.job.yaml')).createWritable();
      await stream.write('something else');
      await stream.close();
    });
    await note(page, 'three');
    await noticed(page).toContain('holds something else now');
    expect(await disk()).toBe('something else');
    expect(await said(page)).toHaveLength(4);
  });
});

describe('a zip', () => {
  const photo = (name: string, part: string, minute: number) => {
    const when = at.replace(':00:', `:${minute}:`);
    return entryText({ at: when, who: 'HT', told: { kind: 'photograph', name, part } }).text;
  };

  it('gives the job that is in it, with its train and its pictures, each by its whole path', async () => {
    const { page, complaints } = await open();
    await toJob(page);
    const train = ourText('kestrel-three-speed');
    const head = { unit: 'bench 4', complaint: '', by: 'HT', at };
    const its = { file: 'a.train.yaml', hash: hashOf(train) };
    const text =
      newJobText({ ...head, train: its }) +
      photo('x/p.png', 'pump', 10) +
      photo('y/p.png', 'drum', 20);
    const [red, blue] = await Promise.all([dotOf(page, '#f00'), dotOf(page, '#00f')]);
    const zip = zipSync({
      'b/a.train.yaml': Buffer.from(train),
      'b/bench-4.job.yaml': Buffer.from(text),
      'b/x/p.png': red,
      'b/y/p.png': blue,
      'b/y/q.jpg': Buffer.from('no picture'),
    });
    await gives(page, 'Open a job from disk…', 'b.zip', zip);
    await noticed(page).toContain('b.zip is open.');
    await noticed(page).toContain(
      'keeps them as they came, with whatever a camera put in: y/q.jpg.',
    );
    const shown = page.locator('.jobs-gallery img');
    await expect.poll(() => shown.count()).toBe(2);
    expect(await Promise.all([0, 1].map((n) => redOf(shown.nth(n))))).toEqual([255, 0]);
    await page.getByText('y/q.jpg is kept as it came').waitFor();
    // Its train came with it, and is the one that it was begun with.
    await expect.poll(() => page.locator('h1').textContent()).toContain('Kestrel');
    expect(await page.getByText('Nothing is judged').count()).toBe(0);
    const files = unzipSync(
      readFileSync(await (await saved(page, 'Save it with its photographs')).path()),
    );
    expect(Object.keys(files).toSorted()).toEqual(
      ['a.train.yaml', 'bench-4.job.yaml', 'x/p.png', 'y/p.png', 'y/q.jpg'].toSorted(),
    );
    expect(textIn(files['y/q.jpg'])).toBe('no picture');
    // The same picture again is none; another by its name is kept beside it.
    const other = { 'bench-4.job.yaml': Buffer.from(text), 'x/p.png': blue };
    await gives(page, 'Take in a colleague’s copy…', 'c.zip', zipSync(other));
    await noticed(page).toContain(
      'x/p.png is another picture in that copy: theirs is kept as x/p-2.png.',
    );
    await expect.poll(() => shown.count()).toBe(3);
    expect(complaints).toEqual([]);
  });

  it('with several jobs is refused, and they are named', async () => {
    const { page } = await open();
    await toJob(page);
    const two = { 'a.job.yaml': Buffer.from(HEADER), 'b.job.yaml': Buffer.from(HEADER) };
    await gives(page, 'Open a job from disk…', 'b.zip', zipSync(two));
    await noticed(page).toContain('holds several jobs: a.job.yaml, b.job.yaml.');
  });
});

// A picture of one colour.
async function dotOf(page: Page, colour: string): Promise<Buffer> {
  const address = await page.evaluate((its) => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 8, height: 8 });
    const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
    pen.fillStyle = its;
    pen.fillRect(0, 0, 8, 8);
    return canvas.toDataURL('image/png');
  }, colour);
  return Buffer.from(address.slice(address.indexOf(',') + 1), 'base64');
}

// How red its middle is, to the nearest of nothing and all.
async function redOf(image: Locator): Promise<number> {
  return image.evaluate(async (its: HTMLImageElement) => {
    await its.decode();
    const canvas = Object.assign(document.createElement('canvas'), { width: 8, height: 8 });
    const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
    pen.drawImage(its, 0, 0, 8, 8);
    return 255 * Math.round((pen.getImageData(4, 4, 1, 1).data[0] ?? 0) / 255);
  });
}

describe('a photograph', () => {
  const input = (page: Page) => page.getByLabel('Photograph from a file');

  it('is kept upright, scaled, and without the place, in a zip that opens elsewhere', async () => {
    const { page, address, complaints } = await open();
    await begin(page);
    const dirty = await jpegWithPlace(page);
    // The test's own picture has what is to be stripped: what maker and phone put in.
    expect(segmentsOf(dirty)).toEqual(expect.arrayContaining(['Exif', 'XMP', 'remark']));
    expect(dirty.toString('latin1')).toContain('GPS place');
    await page.getByLabel('What does the photograph show?').fill('sun shell');
    await input(page).setInputFiles({
      name: 'IMG_0012.jpg',
      mimeType: 'image/jpeg',
      buffer: dirty,
    });
    const picture = page.locator('.jobs-gallery img');
    await picture.waitFor();
    expect(await said(page)).toEqual([
      expect.stringMatching(/^Photograph: \d{17}-TW\.jpg, of sun shell$/u),
    ]);
    const download = await saved(page, 'Save it with its photographs');
    expect(download.suggestedFilename()).toBe('unit-7-green-tag.job.zip');
    const zip = readFileSync(await download.path());
    const files = unzipSync(zip);
    const names = Object.keys(files);
    const yaml = names.find((its) => its.endsWith('.job.yaml')) ?? '';
    const jpeg = names.find((its) => its.endsWith('.jpg')) ?? '';
    const { job, problems } = readJob(textIn(files[yaml]));
    expect(problems).toEqual([]);
    expect(job?.entries[0]?.told).toEqual({ kind: 'photograph', name: jpeg, part: 'sun shell' });
    const clean = Buffer.from(files[jpeg] ?? []);
    expect(segmentsOf(clean).filter((its) => its !== 'colours')).toEqual([]);
    expect(clean.toString('latin1')).not.toMatch(/GPS|Exif|http/u);

    // 3000 by 1500 px, to be turned a quarter clockwise: what was left is on top.
    const other = await page.context().browser()?.newContext({ serviceWorkers: 'block' });
    const there = (await other?.newPage()) as Page;
    await there.goto(address);
    await button(there, 'Job').click();
    await gives(there, 'Open a job from disk…', 'a.zip', zip);
    const shown = there.locator('.jobs-gallery img');
    await shown.waitFor();
    const seen = await shown.evaluate(async (image: HTMLImageElement) => {
      await image.decode();
      const { naturalWidth: width, naturalHeight: height } = image;
      const canvas = Object.assign(document.createElement('canvas'), { width, height });
      const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
      pen.drawImage(image, 0, 0);
      const red = (y: number) => [...pen.getImageData(width / 2, y, 1, 1).data].slice(0, 3);
      return { width, height, top: red(10), bottom: red(height - 10) };
    });
    expect([seen.width, seen.height]).toEqual([1000, 2000]);
    const [top, bottom] = [seen.top, seen.bottom].map(([r = 0, , b = 0]) => Math.sign(r - b));
    expect([top, bottom]).toEqual([1, -1]);
    expect(complaints).toEqual([]);
  });

  it('that another’s zip brings with its place is stripped too', async () => {
    const { page } = await open();
    await begin(page, 'to draw one with');
    const dirty = await jpegWithPlace(page);
    const told = { kind: 'photograph', name: 'IMG_0012.jpg' } as const;
    const text = HEADER + entryText({ at, who: 'HT', told }).text;
    const zip = zipSync({ 'b/bench-4.job.yaml': Buffer.from(text), 'b/IMG_0012.jpg': dirty });
    await gives(page, 'Open a job from disk…', 'b.zip', zip);
    await page.locator('.jobs-gallery img').waitFor();
    const download = await saved(page, 'Save it with its photographs');
    const files = unzipSync(readFileSync(await download.path()));
    expect(Object.keys(files).toSorted()).toEqual(['IMG_0012.jpg', 'bench-4.job.yaml']);
    expect(Buffer.from(files['IMG_0012.jpg'] ?? []).toString('latin1')).not.toMatch(/GPS|Exif/u);
  });

  it('that is none is refused in words, and nothing is written down', async () => {
    const { page } = await open();
    await begin(page);
    await input(page).setInputFiles({
      name: 'a.jpg',
      mimeType: 'image/jpeg',
      buffer: Buffer.from('no picture'),
    });
    const alert = page.getByRole('alert');
    await expect.poll(() => alert.textContent()).toContain('a.jpg is no picture that this browser');
    expect(await said(page)).toEqual([]);
  });

  it('is not taken before there are initials to write it by', async () => {
    const { page } = await open();
    await begin(page);
    await page.getByLabel('Your initials').fill('');
    let asked = false;
    page.on('filechooser', () => (asked = true));
    await page.getByText('Take a photograph').click();
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('your initials first');
    expect(asked).toBe(false);
    await page.getByLabel('Your initials').fill('TW');
    const chosen = page.waitForEvent('filechooser');
    await page.getByText('Take a photograph').click();
    await chosen;
  });
});
