import fs from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { ask } from '../src/doors/cli/asked.ts';
import { press } from '../src/doors/cli/press.ts';
import { newJobText } from '../src/shop/records/index.ts';
import { PAPERS, type Printing, typstOf } from '../src/telling/sheets/index.ts';
import { type Page, pagesOf, textOf, type Word } from './paper.ts';
import { ROOT } from './sources.ts';

// Every sheet of every train, typeset and read back from the PDF. What must stand there comes
// from the train files and from the answers beside them, which another program worked out.
const FOLDER = path.join(ROOT, 'trains');
const NAMES = fs
  .readdirSync(FOLDER)
  .filter((file) => file.endsWith('.train.yaml'))
  .map((file) => file.slice(0, -'.train.yaml'.length));

const cache = path.join(ROOT, 'node_modules/.cache');
fs.mkdirSync(cache, { recursive: true });
const scratch = fs.mkdtempSync(path.join(cache, 'sheets-'));
afterAll(() => fs.rmSync(scratch, { recursive: true }));

interface TrainFile {
  readonly name: string;
  readonly ends?: readonly string[];
  readonly devices?: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly teardown?: Readonly<Record<string, Part>>;
  readonly packs?: Readonly<Record<string, { readonly limits?: Readonly<Record<string, Limit>> }>>;
  readonly endplay?: Readonly<Record<string, { readonly limit?: Limit }>>;
}
interface Part {
  readonly face?: string;
  readonly up?: string;
  readonly bolts?: { readonly torque?: string; readonly once?: string };
}
interface Limit {
  readonly least?: string;
  readonly most?: string;
  readonly source?: string;
}

describe.each(NAMES)('%s', async (name) => {
  const file = path.join(FOLDER, `${name}.train.yaml`);
  const printing = await printingOf(`sheet set ${file}`);
  const train = parse(fs.readFileSync(file, 'utf8')) as TrainFile;

  describe.each(PAPERS)('on %s', (paper) => {
    const printed = press(typstOf({ ...printing, paper }));
    const pages = pagesOf(printed.pdf);
    const text = pages.map(textOf).join('\n');
    const on = (title: string) =>
      pages.filter((page) => textOf(page).startsWith(`${printing.stamp.train} ${title}`));
    const textOn = (title: string) => on(title).map(textOf).join('\n');

    it('is a PDF for everybody, with every character in its fonts', () => {
      expect(printed.readable).toBe(true);
      expect(text).not.toContain('\uFFFD');
    });

    it('has its name, its hash, its date and its number on every page of the paper', () => {
      const [short, long] = paper === 'a4' ? [595, 842] : [612, 792];
      const { hash, date } = printing.stamp;
      expect(pages).toHaveLength(printed.pages);
      for (const [i, page] of pages.entries()) {
        expect([page.width, page.height].map(Math.round).toSorted((a, b) => a - b)).toEqual([
          short,
          long,
        ]);
        const said = textOf(page);
        expect(said).toContain(train.name);
        expect(said).toContain(
          `File ${hash} · ${date} · Holdturn page ${i + 1} of ${pages.length}`,
        );
      }
    });

    it('keeps every word on the page, and no two on one another', () => {
      expect(pages.flatMap(outside)).toEqual([]);
      const drawn = new Set(on('Stick diagram'));
      expect(pages.filter((page) => !drawn.has(page)).flatMap(onOneAnother)).toEqual([]);
    });

    it('tells every ratio on the chart', () => {
      const expected = fs.readFileSync(path.join(FOLDER, `${name}.expected.yaml`), 'utf8');
      const ratios = [...(expected.split('faults:')[0]?.matchAll(/ratio: "([^"]+)"/gu) ?? [])];
      expect(ratios.length).toBeGreaterThan(0);
      for (const [, ratio = ''] of ratios)
        expect(textOn('Application chart')).toContain(told(ratio));
    });

    it('tells every part and where its face looks, to strip and to build', () => {
      for (const [part, { face }] of Object.entries(train.teardown ?? {})) {
        for (const sheet of [textOn('Strip sheet'), textOn('Build sheet')]) {
          expect(sheet).toContain(part);
          if (face !== undefined) expect(sheet).toContain(`: ${face}`);
        }
      }
    });

    it('has what is measured, tightened and put on air among the steps of the build', () => {
      if (!train.teardown) return;
      const sheet = textOn('Build sheet');
      const friction = Object.entries(train.devices ?? {}).filter(([, its]) => !('one-way' in its));
      for (const [device] of friction) expect(sheet).toContain(`. Air check: ${device}`);
      for (const device of Object.keys(train.packs ?? {}))
        expect(sheet).toContain(`. Pack clearance: ${device}`);
      for (const shaft of Object.keys(train.endplay ?? {}))
        expect(sheet).toContain(`. End play: ${shaft}`);
      for (const [part, { bolts }] of Object.entries(train.teardown)) {
        if (bolts) expect(sheet).toContain(`. Tighten: ${part}`);
      }
    });

    it('turns the unit over where another end is up, to strip and to build', () => {
      const ends = Object.values(train.teardown ?? {}).flatMap(({ up }) => up ?? []);
      const turns = ends.filter((up, i) => i > 0 && up !== ends[i - 1]).length;
      for (const sheet of ['Strip sheet', 'Build sheet']) {
        expect(textOn(sheet).split('Turn the unit over').length - 1, sheet).toBe(turns);
      }
    });

    it('tells every limit with its source, in millimetres and inches', () => {
      const sheet = textOn('Measure and select');
      const limits = [
        ...Object.values(train.packs ?? {}).flatMap((pack) => Object.entries(pack.limits ?? {})),
        ...Object.values(train.endplay ?? {}).map((play) => ['', play.limit ?? {}] as const),
      ];
      for (const [of, { least, most, source }] of limits) {
        // That of each friction stands for all of them together: its own test is packs.
        if (of === 'each friction') continue;
        for (const length of [least, most]) {
          if (length !== undefined) expect(sheet).toMatch(inBothUnits(length));
        }
        expect(sheet).toContain(source === undefined ? 'unsourced' : `source: ${source}`);
      }
    });

    it('tells which way each one-way clutch turns, from where the file does', () => {
      for (const device of Object.values(train.devices ?? {})) {
        const { 'one-way': races, lets } = device as { 'one-way'?: string[]; lets?: string };
        if (!races || lets === undefined) continue;
        const [inner = '', outer = ''] = races.map((race) => race.replace('.', ' '));
        const locks = lets === 'clockwise' ? 'anticlockwise' : 'clockwise';
        expect(textOn('One-way card')).toContain(
          `outer race: ${outer} inner race: ${inner} ${train.ends?.[0] ?? 'input end'} as described turns ${lets}, locks ${locks}`,
        );
      }
    });

    it('cautions above the first step of every task', () => {
      for (const title of TASKS) {
        const [first] = on(title);
        if (first) expect(textOf(first)).toMatch(/^.{0,200}Take care.*licensed practice/su);
      }
    });
  });
});

const TASKS = [
  'Diagnosis sheet',
  'Strip sheet',
  'Measure and select',
  'Build sheet',
  'One-way card',
  'Torque capacity',
];

async function printingOf(typed: string): Promise<Printing> {
  const { out, err } = await ask(`${typed} --date 2026-11-25 --json`);
  if (err) throw new Error(err);
  return JSON.parse(out) as Printing;
}

// "17/7 = 2.429" as the sheets write it, from the fraction.
function told(ratio: string): string {
  const [num = 0, den = 1] = ratio.split('/').map(Number);
  const decimal = (num / den).toFixed(3).replace(/\.?0+$/u, '');
  const long = Math.max(Math.abs(num), den) > 999;
  const text = den === 1 ? ratio : long ? `≈ ${decimal}` : `${ratio} = ${decimal}`;
  return text.replaceAll('-', '−');
}

// The digits that the file has stand first or in brackets.
function inBothUnits(length: string): RegExp {
  const [digits = '', unit = ''] = length.split(' ');
  const own = `${digits.replace('.', '\\.')}\\s${unit}`;
  return unit === 'mm'
    ? new RegExp(`${own} \\([\\d.]+\\sin\\)`, 'u')
    : new RegExp(`[\\d.]+\\smm \\(${own}\\)`, 'u');
}

// Margins are 17 mm at the sides, with a point for rounding.
function outside({ width, height, words }: Page): string[] {
  const side = (17 / 25.4) * 72 - 1;
  return words
    .filter(({ left, right, top, bottom }) => {
      return left < side || right > width - side || top < 30 || bottom > height - 15;
    })
    .map(({ text }) => text);
}

// The box of a word is as high as its line, so neighbouring lines touch: more than a third is told.
function onOneAnother({ words }: Page): string[] {
  const size = (word: Word) => (word.right - word.left) * (word.bottom - word.top);
  return words.flatMap((a, i) =>
    words.slice(i + 1).flatMap((b) => {
      const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      const both = wide > 0 && high > 0 ? wide * high : 0;
      return both > Math.min(size(a), size(b)) / 3 ? [`${a.text} on ${b.text}`] : [];
    }),
  );
}

describe('names that want to be something else', () => {
  const long = 'kestrel of the long line of long names x';
  const word = 'Vorwaertskupplungsgehaeusedeckelschraube';
  const written = fs
    .readFileSync(path.join(FOLDER, 'kestrel-three-speed.train.yaml'), 'utf8')
    .replace('name: Kestrel three-speed', `name: ${long}`)
    .replaceAll('forward clutch', word)
    .replaceAll('second brake', 'second brake that holds the second racer')
    .replaceAll('low sprag', 'low sprag between rear carrier and casing')
    .replaceAll('main shaft', 'main shaft with the counter gear on its end')
    .replaceAll('"1":', '"the first with a name of forty letters":');

  it.each(['en', 'es'])('fit where they are forty letters long: %s', async (lang) => {
    const file = path.join(scratch, 'long.yaml');
    fs.writeFileSync(file, written);
    const job = path.join(scratch, 'long.job.yaml');
    const at = '2026-11-24T08:00:00.000Z';
    const complaint = `${word} ${'of many words '.repeat(20)}`.trim();
    fs.writeFileSync(job, newJobText({ unit: long, complaint, by: 'TW', at }));
    const printing = await printingOf(`sheet set ${file} --job ${job} --lang ${lang}`);
    for (const paper of PAPERS) {
      const printed = press(typstOf({ ...printing, paper }));
      const pages = pagesOf(printed.pdf);
      expect(printed.readable).toBe(true);
      expect(pages.flatMap(outside)).toEqual([]);
      const standing = pages.filter(({ width, height }) => width < height);
      expect(standing.flatMap(onOneAnother)).toEqual([]);
      const letters = pages.map(textOf).join('').replaceAll(/\s/gu, '');
      for (const name of [long, word]) expect(letters).toContain(name.replaceAll(' ', ''));
    }
  });

  it('print as text and run nothing', async () => {
    const names = [
      '#panic(1)',
      '*bold* _thin_ $x$ `raw`',
      '"); #read("a")',
      'back\\slash ] } ) <l> @r',
      '// no = comment',
    ];
    const [input = '', output = '', clutch = '', roller = '', about = ''] = names;
    const text = JSON.stringify({
      holdturn: 1,
      name: about,
      input,
      output,
      sets: { set: { sun: 30, ring: 66 } },
      joined: { [input]: ['set.sun'], [output]: ['set.carrier'] },
      devices: {
        [clutch]: { brake: 'set.ring' },
        [roller]: { 'one-way': ['set.ring', 'case'], lets: 'clockwise' },
      },
      ranges: { D: { '1': [clutch] } },
    });
    const file = path.join(scratch, 'markup.yaml');
    fs.writeFileSync(file, text);
    const { pdf, readable } = press(typstOf(await printingOf(`sheet set ${file}`)));
    expect(readable).toBe(true);
    const said = pagesOf(pdf).map(textOf).join('').replaceAll(/\s/gu, '');
    for (const name of names) expect(said).toContain(name.replaceAll(' ', ''));
  });
});
