import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readTrain } from '../../../src/engine/trainfile/index.ts';
import type { Train } from '../../../src/engine/train/index.ts';
import { readJob } from '../../../src/shop/records/index.ts';
import { withBrowser } from '../browser.ts';
import { textSaved } from '../jobs.ts';
import { ourText } from '../links.ts';
import { Fingers, Keys, type Person } from '../person.ts';
import { type Answers, wholeJob } from './wholejob.ts';

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
  its.page.context().setDefaultTimeout(15_000);
  return its;
}

// The same answers, told to the command; the file that it makes of them.
async function byTheCommand(answers: Answers, text: string, train: string): Promise<string> {
  const { job } = readJob(text);
  if (!job?.train) throw new Error('no job');
  writeFileSync(path.join(folder, job.train.file), train);
  return answers.told(job, path.join(mkdtempSync(path.join(folder, 'a-')), 'its.job.yaml'));
}

describe('a whole job, from the complaint to the first start, signed and printed', () => {
  it.each([
    ['by touch', (page) => new Fingers(page)],
    ['by keys alone', (page) => new Keys(page)],
  ] satisfies [string, (page: Fingers['page']) => Person][])(
    '%s, with no network and a reload in each room, is the command’s',
    async (_, made) => {
      const { page, complaints } = await opened();
      const person = made(page);
      const train = ourText('kestrel-three-speed');
      const answers = await wholeJob(person, readTrain(train).train as Train);
      const text = await textSaved(page);
      expect(readJob(text).problems).toEqual([]);
      expect(text).toBe(await byTheCommand(answers, text, train));
      if (person instanceof Fingers) {
        const small = person.pressed.filter(({ width, height }) => Math.min(width, height) < 72);
        expect(small.filter(({ name }) => !HEAD.has(name))).toEqual([]);
      }
      expect(complaints).toEqual([]);
    },
    900_000,
  );
});

// Between two pieces of work, not in the middle of one.
const HEAD = new Set(['Job', 'Find a fault', 'Strip it', 'Measure', 'Build it', 'Print']);
