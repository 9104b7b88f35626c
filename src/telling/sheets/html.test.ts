import { expect, it } from 'vitest';
import { voiceOf } from '../narrative/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { AT_THE_INPUT } from '../../asking/request/index.ts';
import { newJobText, readJob, foldJob } from '../../shop/records/index.ts';
import type { Printing, SheetBlock, SheetCell } from './document.ts';
import { htmlOf } from './html.ts';
import { chartSheet } from './chart.ts';
import { drawingSheet } from './drawing.ts';
import { jobCard } from './job.ts';
import { oneWayCard } from './oneway.ts';
import { stripSheet } from './strip.ts';

const NASTY = [
  '<script>alert(1)</script>',
  '"onload="x',
  '&lt;b&gt; & <b>',
  '</style><img src=x onerror=y>',
  "it's <!-- no comment",
];
const [input = '', output = '', brake = '', roller = '', name = ''] = NASTY;
const train = readTrain(
  JSON.stringify({
    holdturn: 1,
    name,
    input,
    output,
    sets: { set: { sun: 30, ring: 66 } },
    joined: { [input]: ['set.sun'], [output]: ['set.carrier'] },
    devices: {
      [brake]: { brake: 'set.ring' },
      [roller]: { 'one-way': ['set.ring', 'case'], lets: 'clockwise' },
    },
    ranges: { D: { '1': [brake] } },
    teardown: { 'a washer': null, 'a brake': { carries: [brake], face: `<i> ${output}` } },
  }),
).train as Train;
const { job } = readJob(
  newJobText({ unit: name, complaint: input, by: 'TW', at: '2026-11-24T08:00:00.000Z' }),
);
const folded = foldJob(job as NonNullable<typeof job>);

const printing = (paper: 'a4' | 'letter'): Printing => ({
  language: 'en',
  paper,
  title: name,
  stamp: { train: name, hash: '0123456789ab', date: '2026-11-25' },
  sheets: [
    chartSheet(train, voiceOf('en')),
    drawingSheet(train, voiceOf('en')),
    stripSheet(train, voiceOf('en'), folded),
    oneWayCard(train, voiceOf('en'), AT_THE_INPUT, folded),
    jobCard(folded, voiceOf('en')),
  ],
});

it.each(['a4', 'letter'] as const)(
  'has every text of the sheets, in order, as text: %s',
  (paper) => {
    const its = printing(paper);
    const text = plain(htmlOf(its));
    const said = its.sheets.flatMap((sheet) => [
      its.stamp.train,
      sheet.title,
      sheet.title,
      ...sheet.blocks.flatMap(textsOf),
      'File 0123456789ab · 2026-11-25 · Holdturn',
      'page  of ',
    ]);
    expect(text).toBe(said.join(''));
    for (const one of NASTY) expect(text).toContain(one);
  },
);

it('has no element and no attribute that a name could have made', () => {
  const tags = htmlOf(printing('a4')).match(/<[a-z]+[^>]*>/gu) ?? [];
  const names = new Set(tags.map((tag) => /^<([a-z]+)/u.exec(tag)?.[1]));
  for (const one of ['script', 'img', 'i']) expect(names.has(one)).toBe(false);
  expect(tags.filter((tag) => / on[a-z]+=/u.test(tag.replaceAll(/="[^"]*"/gu, '')))).toEqual([]);
});

it('gives each column its share of the paper, and each box its height', () => {
  const html = htmlOf(printing('a4'));
  // Of 176 mm, 11 and 13 are fixed; 3, 7 and 3 shares are of the rest.
  expect(html).toContain('<col style="width: 11mm"><col style="width: 35.08mm">');
  expect(html).toContain('block-size: 12mm');
  expect(htmlOf(printing('letter'))).toContain('<col style="width: 36.44mm">');
});

// What a browser shows of it; drawings left out.
function plain(html: string): string {
  return html
    .replaceAll(/<svg.*?<\/svg>/gsu, '')
    .replaceAll(/<[^>]*>/gu, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');
}

function textsOf(block: SheetBlock): string[] {
  switch (block.block) {
    case 'heading':
    case 'paragraph':
      return [block.text];
    case 'caution':
      return [block.title, ...block.lines];
    case 'table':
      return [...block.columns.map(({ head }) => head), ...block.rows.flat().flatMap(cellTexts)];
    case 'ticks':
      return [...block.lines];
    case 'fields':
      return block.fields.flatMap(({ label, value = '' }) => [label, value]);
    case 'lines':
      return [];
    case 'figure':
      return [block.caption];
    case 'together':
      return block.blocks.flatMap(textsOf);
  }
}

function cellTexts(cell: SheetCell): readonly string[] {
  if (typeof cell === 'string') return [cell];
  return 'ticks' in cell ? cell.ticks : [cell.text];
}
