import type { FaultsReport } from '../../asking/faults/index.ts';
import {
  type Changed,
  type FaultRow,
  type MatrixGear,
  type Outcome,
} from '../../engine/faults/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import { benchText, faultName, gearName, roadText } from '../narrative/index.ts';
import { csvOf } from './csv.ts';
import type { Page } from '../text/index.ts';

/**
 * The matrix as comma-separated values (RFC 4180): the healthy train first, then a line a row
 * with the number of its class, two columns a gear (a third, in reverse, where it drives
 * nothing), and its first signs. A cell is a ratio
 * (input speed over output speed, a decimal point in every language) or a word for the state.
 */
export function faultsCsv(
  { train, matrix, bench }: FaultsReport,
  page: Pick<Page, 'voice' | 'stand'>,
): string {
  const { voice, stand } = page;
  const head = (column: string, gear = '') => voice.say('faults.column', { column, gear });
  const heads = [
    head('fault'),
    head('class'),
    ...matrix.gears.flatMap((gear) => {
      const columns = ['drive', 'coast', ...(gear.inReverse ? ['reverse'] : [])];
      return columns.map((column) => head(column, gearName(gear, voice)));
    }),
    head('road'),
    ...(bench ? [head('bench')] : []),
  ];
  const cell = (of: 'state' | 'coast', end: Changed | Outcome) => {
    const { ratio, state } = end;
    if ('is' in end && end.is === 'slips') return voice.say('faults.cell', { state: 'slips' });
    return ratio ? toNumber(ratio) : voice.say(of, { state });
  };
  const cells = (ends: readonly Pick<MatrixGear, 'drive' | 'coast' | 'inReverse'>[]) =>
    ends.flatMap(({ drive, coast, inReverse }) => [
      cell('state', drive),
      cell('coast', coast),
      ...(inReverse ? [cell('coast', inReverse)] : []),
    ]);
  const classOf = (place: number) => matrix.classes.findIndex(({ rows }) => rows.includes(place));
  const line = (row: FaultRow, place: number) => [
    row.faults.map((fault) => faultName(fault, voice)).join(' + '),
    classOf(place) + 1,
    ...cells(row.cells),
    roadText(matrix, row, voice),
    ...(bench ? [benchText(bench[place], train, voice, stand)] : []),
  ];
  const lines = [
    heads,
    [voice.say('faults.healthy'), '', ...cells(matrix.gears), '', ...(bench ? [''] : [])],
    ...matrix.rows.map(line),
  ];
  return csvOf(lines);
}
