import { createHash } from 'node:crypto';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { entryText, newJobText } from '../../shop/records/index.ts';
import type { Printing } from '../../telling/sheets/index.ts';
import { ask } from './asked.ts';
import { DISK } from '../../command/machine/disk.ts';
import { run } from './run.ts';

const K = 'trains/kestrel-three-speed.train.yaml';
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'sheet-'));
const out = path.join(folder, 'sheet.pdf');
afterAll(() => fs.rmSync(folder, { recursive: true }));

describe('a sheet', () => {
  it('is a PDF with a title and its structure tagged, the same bytes for the same day', async () => {
    const typed = `sheet chart ${K} --date 2026-11-25 -o ${out}`;
    expect(await ask(typed)).toEqual({ out: `${out}: one page\n`, err: '', exit: 0 });
    const first = fs.readFileSync(out);
    expect(first.subarray(0, 5).toString()).toBe('%PDF-');
    expect(first.includes('/MarkInfo')).toBe(true);
    await ask(typed);
    expect(fs.readFileSync(out).equals(first)).toBe(true);
  });

  it('is known by the SHA-256 of its file', async () => {
    const { stamp } = await printing(`sheet chart ${K}`);
    const hash = createHash('sha256').update(fs.readFileSync(K)).digest('hex');
    expect(hash.startsWith(stamp.hash)).toBe(true);
    expect(stamp.hash).toHaveLength(12);
  });

  it('says on every page what is wrong with the train', async () => {
    const { stamp } = await printing(`sheet chart ${K} --fault "low sprag: backwards"`);
    expect(stamp.train).toBe('Kestrel three-speed with low sprag: backwards');
  });

  it('reads the train and its hash from standard input', async () => {
    const typed = `sheet chart - --date 2026-11-25 --json`;
    const piped = await ask(typed, { stdin: fs.readFileSync(K, 'utf8') });
    expect(JSON.parse(piped.out)).toEqual(await printing(`sheet chart ${K}`));
  });

  it('is written as source text where its name says so', async () => {
    const source = path.join(folder, 'sheet.typ');
    const { exit } = await ask(`sheet chart ${K} -o ${source}`);
    expect(exit).toBe(0);
    expect(fs.readFileSync(source, 'utf8')).toContain('"17/7 = 2.429"');
  });

  it('is filled in with what was seen and measured', async () => {
    const seen = await printing(`sheet diagnosis ${K} --seen seen`);
    expect(JSON.stringify(seen)).toContain('second brake: will not apply');
    const measured = await printing(`sheet measure ${K} --readings readings --plays plays`);
    // 1.42 mm, and a steel of 1.69 where 1.70 is the least: new ones first, then a part is chosen.
    expect(JSON.stringify(measured)).toMatch(/1\.42.mm.*1\.69.mm/u);
  });

  it('of the build ends with the first start, each step with what can hurt, and room to write', async () => {
    const { sheets } = await printing(`sheet build ${K}`);
    const blocks = sheets.flatMap((its) => its.blocks);
    const from = blocks.findIndex((its) => its.block === 'heading' && its.text === 'First start');
    const start = blocks.slice(from);
    expect(start.filter(({ block }) => block === 'together')).toHaveLength(10);
    expect(JSON.stringify(start)).toMatch(
      /no source.*Start 5\. Pressure before load.*hoist.*line pressure port.*"lines".*Start 10\./u,
    );
    // Common practice, no source: the gauge is on before the engine is started.
    expect(JSON.stringify(start)).toMatch(
      /Start 4\..*gauge at the line pressure port first.*Start 5\./u,
    );
    const { firstStart } = JSON.parse((await ask(`plan ${K} --json`)).out);
    expect(firstStart).toHaveLength(10);
    expect(firstStart[4]).toEqual({ start: 5, does: 'pressure', danger: 'wheels' });
  });

  it('is filled in from a job, and says what of it is left out', async () => {
    const file = path.join(folder, 'unit.job.yaml');
    fs.writeFileSync(file, jobText());
    const { sheets } = await printing(`sheet set ${K} --job ${file}`);
    const [diagnosis, measure, build, card] = [
      'Diagnosis sheet',
      'Measure and select',
      'Build sheet',
      'Job card',
    ].map((title) => JSON.stringify(sheets.find((its) => its.title === title)));
    expect(diagnosis).toMatch(/No second.*second brake: will not apply/u);
    // The limit of the job, 1.00 to 1.40 mm, whose middle wants 0.22 more than the backing plate of 5.00.
    expect(measure).toMatch(
      /1\.00.mm.*manual p. 12.*1\.42.mm.*5\.00.mm.*5\.20.mm.*1\.22.mm.*5\.40.mm.*TW/u,
    );
    expect(build).toMatch(/Checks in the job.*rear carrier.*clockwise only.*TW/u);
    expect(card).toMatch(/Read, forward clutch.*struck.*Struck by HT.*wrong gauge/u);
    const { out: told } = await ask(`sheet job ${K} --job ${file} -o ${out}`);
    expect(told).toMatch(/^One line of the job is left out: .*unit\.job\.yaml:\d+:1: /mu);
    expect(told).toMatch(/^.*unit\.job\.yaml was opened with another version of the train file/mu);
  });

  it('leaves out of a set what the file tells nothing of', async () => {
    const { sheets } = await printing('sheet set trains/wren-plain-set.train.yaml');
    expect(sheets.map(({ title }) => title)).toEqual([
      'Application chart',
      'Stick diagram',
      'Diagnosis sheet',
      'Strip sheet',
      'Measure and select',
    ]);
    const { out: told } = await ask(`sheet set trains/wren-plain-set.train.yaml -o ${out}`);
    expect(told).toMatch(
      /: \d+ pages\nLeft out, .*: Build sheet, One-way card and Torque capacity\.\n$/u,
    );
  });
});

// As it was written in the shop, with a line at the end that was cut short.
function jobText(): string {
  let text = newJobText({
    unit: 'bench 3',
    train: { file: 'kestrel-three-speed.train.yaml', hash: '0123456789ab' },
    complaint: 'No second',
    by: 'TW',
    at: '2026-11-24T08:00:00.000Z',
  });
  const add = (
    minute: number,
    who: string,
    what: Pick<Parameters<typeof entryText>[0], 'told' | 'strikes'>,
  ) => {
    const at = `2026-11-24T09:${`${minute}`.padStart(2, '0')}:00.000Z`;
    const entry = entryText({ at, who, ...what });
    text += entry.text;
    return entry.id;
  };
  const reading = (from: string) => {
    return { kind: 'reading', of: 'forward clutch', text: from } as const;
  };
  add(0, 'TW', { told: { kind: 'seen', of: 'D 2', text: 'slips' } });
  const wrong = add(1, 'TW', { told: reading('{ feeler: [0.42 mm, 0.42 mm, 0.42 mm] }') });
  add(2, 'TW', { told: reading('{ feeler: [1.42 mm, 1.42 mm, 1.42 mm] }') });
  add(3, 'HT', { strikes: { id: wrong, because: 'wrong gauge' } });
  const limit = { least: '1.00 mm', most: '1.40 mm', source: 'manual p. 12', by: 'HT' };
  add(4, 'HT', { told: { kind: 'limit', of: 'forward clutch', limit } });
  add(5, 'TW', { told: { kind: 'chosen', of: 'forward clutch', part: '5.40 mm' } });
  add(6, 'TW', { told: { kind: 'check', of: 'rear carrier', felt: 'clockwise only' } });
  return `${text}- { at: 2026-11-24T09:07`;
}

const REFUSED: readonly [typed: string, line: string][] = [
  ['sheet', 'missing sheet or train file: type holdturn sheet chart FILE -o sheet.pdf'],
  ['sheet chart', 'missing sheet or train file: type holdturn sheet chart FILE -o sheet.pdf'],
  [`sheet chrat ${K} -o x.pdf`, 'unknown sheet: chrat; did you mean chart?'],
  [`sheet chart ${K}`, 'missing file to write: type -o sheet.pdf'],
  [`sheet chart ${K} --paper a5 -o x.pdf`, 'unknown paper: a5; type --paper a4 or --paper letter'],
  [
    `sheet chart ${K} --date 2026-02-30 -o x.pdf`,
    'unreadable date: 2026-02-30; type it as in --date 2026-11-25',
  ],
  [
    `sheet chart ${K} -o ${folder}/no/x.pdf`,
    `cannot write ${folder}/no/x.pdf (ENOENT); give the path of a file that you may write`,
  ],
  [
    'sheet build trains/wren-plain-set.train.yaml -o x.pdf',
    'no teardown in trains/wren-plain-set.train.yaml: list its parts under teardown, in the order in which they come off',
  ],
  [
    'sheet capacity trains/wren-plain-set.train.yaml -o x.pdf',
    'no capacities in trains/wren-plain-set.train.yaml: tell under capacities how much each device can carry, by its sizes or as a torque Nm',
  ],
];

it.each(REFUSED)('%s', async (typed, line) => {
  expect(await ask(typed)).toEqual({ out: '', err: `holdturn: ${line}\n`, exit: 2 });
});

it('says so where the typesetter is not installed, and writes nothing', async () => {
  let said = '';
  const exit = await run({
    args: ['sheet', 'chart', K, '-o', 'x.pdf'],
    env: {},
    terminal: false,
    ...DISK,
    write: () => expect.unreachable(),
    press: () => Promise.reject(Object.assign(new Error('gone'), { code: 'MODULE_NOT_FOUND' })),
    out: () => expect.unreachable(),
    err: (text) => (said += text),
  });
  expect(exit).toBe(2);
  expect(said).toMatch(/^holdturn: the typesetter is not installed here: install the package/u);
});

async function printing(typed: string): Promise<Printing> {
  const { out: text, err } = await ask(`${typed} --date 2026-11-25 --json`);
  expect(err).toBe('');
  return JSON.parse(text) as Printing;
}
