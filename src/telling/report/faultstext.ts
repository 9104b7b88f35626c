import type { FaultsReport } from '../../asking/faults/index.ts';
import type { FaultClass, FaultRow } from '../../engine/faults/index.ts';
import { benchText, roadText } from '../narrative/index.ts';
import { faultsTable, nameOf } from './faultstable.ts';
import { type Page, paragraph, section } from '../text/index.ts';

export function faultsText(report: FaultsReport, page: Page): string {
  const { train, matrix, bench } = report;
  const { voice } = page;
  const heard = matrix.classes.filter(({ silent }) => !silent);
  const silent = matrix.classes.filter((among) => among.silent);
  const count = (size: number) => matrix.rows.filter(({ faults }) => faults.length === size).length;
  const title = voice.say('faults.title', {
    train: voice.train(train),
    faults: count(1),
    pairs: count(2),
    gears: matrix.gears.length,
  });
  const air = bench?.some((sign) => sign && sign.check.on.length > 0) ? 'yes' : 'no';
  const legend = voice.say('faults.legend', {
    tied: voice.say('faults.cell', { state: 'tied_up' }),
    slips: voice.say('faults.cell', { state: 'slips' }),
  });
  const rowOf = (place: number) => matrix.rows[place] as FaultRow;
  return [
    ...paragraph(title, page).map(page.ink.strong),
    ...paragraph(voice.say('faults.caution', { air }), page).map(page.ink.strong),
    '',
    ...paragraph(matrix.gears.length === 0 ? voice.say('gears.none') : legend, page),
    ...(heard.length === 0 ? [] : ['', ...faultsTable(matrix, heard, page)]),
    ...section(
      voice.say('faults.silent'),
      silent.flatMap(({ rows }) =>
        rows.flatMap((place) => paragraph(nameOf(rowOf(place).faults, page), page, '  ')),
      ),
      page,
    ),
    ...(bench
      ? section(
          voice.say('faults.signs'),
          matrix.classes.flatMap((among) => signLines(report, among, page)).slice(0, -1),
          page,
        )
      : []),
    '',
    ...paragraph(voice.say('faults.more'), page).map(page.ink.faint),
  ].join('\n');
}

// A class has one sign on the road, and its faults theirs on the bench: like ones are told once.
function signLines(report: FaultsReport, { rows }: FaultClass, page: Page): string[] {
  const { train, matrix, bench } = report;
  const { voice, stand } = page;
  const inner = { ...page, columns: page.columns - INDENT.length };
  const indented = (text: string) => paragraph(text, inner).map((line) => INDENT + line);
  const rowOf = (place: number) => matrix.rows[place] as FaultRow;
  const alike = new Map<string, string[]>();
  for (const place of rows) {
    const text = benchText(bench?.[place], train, voice, stand);
    const names = paragraph(nameOf(rowOf(place).faults, page), page, ' ');
    alike.set(text, [...(alike.get(text) ?? []), ...names]);
  }
  return [
    ...[...alike].flatMap(([text, names]) => [...names, ...indented(text)]),
    ...indented(roadText(matrix, rowOf(rows[0] ?? 0), voice)),
    '',
  ];
}

const INDENT = '   ';
