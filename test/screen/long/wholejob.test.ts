import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { readJob } from '../../../src/shop/records/index.ts';
import { withBrowser } from '../browser.ts';
import { textSaved } from '../jobs.ts';
import { ourText } from '../links.ts';
import { Fingers, Keys, type Person } from '../person.ts';
import { type Answers, type Bench, wholeJob } from './wholejob.ts';

const open = withBrowser();
const TABLET = { viewport: { width: 820, height: 1180 }, hasTouch: true } as const;
const folder = mkdtempSync(path.join(tmpdir(), 'holdturn-whole-'));
afterAll(() => rmSync(folder, { recursive: true }));

// With the page's own worker, and from then on with no network.
async function opened() {
  const its = await open('', { ...TABLET, serviceWorkers: 'allow' });
  const ready = 'navigator.serviceWorker.ready.then(({ active }) => active?.state)';
  await expect.poll(() => its.page.evaluate(ready), { timeout: 30_000 }).toBe('activated');
  await its.page.context().setOffline(true);
  its.page.context().setDefaultTimeout(60_000);
  return its;
}

// The same answers, told to the command; the file that it makes of them.
async function byTheCommand(answers: Answers, text: string, train: string): Promise<string> {
  const { job } = readJob(text);
  if (!job?.train) throw new Error('no job');
  const its = mkdtempSync(path.join(folder, 'a-'));
  writeFileSync(path.join(its, job.train.file), train);
  return answers.told(job, path.join(its, 'its.job.yaml'));
}

const KESTREL: Bench = {
  text: ourText('kestrel-three-speed'),
  gear: 'D 1',
  plays: { 'turbine shaft': ['0.50', '0.51', '0.50'], 'main shaft': ['0.30', '0.31', '0.30'] },
  pack: {
    name: 'second brake',
    first: ['1.38', '1.40', '1.39'],
    ring: '1.80 mm',
    again: ['1.19', '1.18', '1.19'],
  },
  breaks: ['6.1', '8 stop', '18', 'start 5'],
};

// A unit of the test's own, its figures invented: one set, its sun driven, its ring held by a pack.
const STAND: Bench = {
  text: `holdturn: 1
name: One set in a case
input: crank
output: flange
sets:
  set: { sun: 30, ring: 66, planets: 3 }
joined: { crank: [set.sun], flange: [set.carrier] }
devices:
  ring brake: { brake: set.ring }
ranges:
  D: { "1": [ring brake] }
  N: { "N": [] }
teardown:
  front cover: { outer: bolted to the case, refit: reuse, closes: [flange] }
  cover washer: { faces: output, face: the grooves, refit: reuse, sets: flange }
  carrier: { carries: [set.carrier, flange], inner: on the sun, refit: reuse }
  sun: { carries: [set.sun, crank], inner: bushings in the case, refit: reuse }
  brake pack: { carries: [ring brake], outer: lugs in the case, frictions: 3, steels: 3, refit: reuse }
  ring gear: { carries: [set.ring], inner: bearing in the case, refit: reuse }
endplay:
  flange: { limit: { least: 0.30 mm, most: 0.60 mm } }
packs:
  ring brake:
    shelf: { part: snap ring, fitted: 1.60 mm, sizes: [1.40 mm, 1.60 mm, 1.80 mm] }
    plates:
      - { kind: steel, thickness: 1.80 mm }
      - { kind: friction, thickness: 2.00 mm }
      - { kind: steel, thickness: 1.80 mm }
      - { kind: friction, thickness: 2.00 mm }
      - { kind: steel, thickness: 1.80 mm }
      - { kind: friction, thickness: 2.00 mm }
    limits:
      clearance: { least: 0.80 mm, most: 1.20 mm }
`,
  gear: 'D 1',
  plays: { flange: ['0.44', '0.45', '0.44'] },
  pack: {
    name: 'ring brake',
    first: ['1.28', '1.30', '1.29'],
    ring: '1.80 mm',
    again: ['1.09', '1.08', '1.09'],
  },
  breaks: ['1', '3', 'start 5'],
};

async function describes(page: Page, { text }: Bench): Promise<void> {
  await page.getByText('File', { exact: true }).click();
  await page.getByRole('button', { name: 'New, from nothing' }).click();
  await page.getByRole('button', { name: 'As text' }).click();
  await page.getByRole('textbox').first().click();
  // All at once, as from a clipboard: the editor would complete and indent what is typed.
  await page.keyboard.insertText(text);
  await page.getByRole('heading', { name: 'One set in a case' }).waitFor();
}

describe('a whole job, from the complaint to the first start, signed and printed', () => {
  it.each<[string, Bench, (page: Page) => Person]>([
    ['of ours, by touch', KESTREL, (page) => new Fingers(page)],
    ['of ours, by keys alone', KESTREL, (page) => new Keys(page)],
    ['that the test describes, by touch', STAND, (page) => new Fingers(page)],
  ])(
    'on a train %s, with no network and a reload in each room, is the command’s',
    async (_, bench, made) => {
      const { page, complaints } = await opened();
      if (bench === STAND) await describes(page, bench);
      const person = made(page);
      const answers = await wholeJob(person, bench);
      const text = await textSaved(page);
      expect(readJob(text).problems).toEqual([]);
      expect(text).toBe(await byTheCommand(answers, text, bench.text));
      if (person instanceof Fingers) {
        const small = person.pressed.filter(({ width, height }) => Math.min(width, height) < 72);
        expect(small.filter(({ name }) => !HEAD.has(name))).toEqual([]);
        expect(person.pressed.length).toBeGreaterThan(60);
      }
      expect(complaints).toEqual([]);
    },
    900_000,
  );
});

// Between two pieces of work, not in the middle of one.
const HEAD = new Set(['Job', 'Find a fault', 'Strip it', 'Measure', 'Build it', 'Print']);
