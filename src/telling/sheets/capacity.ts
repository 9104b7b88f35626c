import type { MarginReport } from '../../asking/gears/index.ts';
import { type Voice } from '../narrative/index.ts';
import { marginCells, marginSources, pressureText, sidesOf } from '../report/index.ts';
import { cautionOf } from './cautions.ts';
import type { SheetBlock, SheetColumn, Sheet } from './document.ts';

/** Torque capacity: what each gear passes before something slips, and from which pressure it holds. */
export function capacitySheet(report: MarginReport, voice: Voice): Sheet {
  const { train, load, gears, pressureUnit: unit } = report;
  const told = {
    train: voice.train(train),
    pressure: pressureText(report, voice),
    engine: voice.decimal(load.engineNm),
    ratio: voice.decimal(load.stallRatio),
  };
  return {
    title: voice.say('sheet.title', { sheet: 'capacity' }),
    blocks: [
      cautionOf([], voice, [voice.say('margin.caution'), voice.say('caution.stall')]),
      { block: 'paragraph', text: voice.say('margin.title', told), look: 'strong' },
      { block: 'paragraph', text: voice.say('margin.own data') },
      ...(['drive', 'coast'] as const).flatMap((end): SheetBlock[] => {
        const torque = voice.decimal(gears[0]?.[end].askedNm ?? load.engineNm);
        return [
          { block: 'heading', text: voice.say(`margin.${end}`, { torque }) },
          {
            block: 'table',
            columns: columnsOf(unit, voice),
            rows: gears.flatMap((gear) => {
              return sidesOf(gear, end, voice).map(([text, side]) => [
                { text, look: 'strong' } as const,
                ...marginCells(side, unit, voice).map((cell) => {
                  return typeof cell === 'string' ? cell : voice.decimal(cell);
                }),
              ]);
            }),
          },
        ];
      }),
      { block: 'heading', text: voice.say('margin.sources') },
      ...marginSources(report, voice).map((text): SheetBlock => ({ block: 'paragraph', text })),
      { block: 'paragraph', text: voice.say('margin.legend'), look: 'quiet' },
    ],
  };
}

function columnsOf(unit: string, voice: Voice): SheetColumn[] {
  const column = (head: string, share: number): SheetColumn => {
    return { head: voice.say('head', { head }), width: { share } };
  };
  const number = (head: string, share: number): SheetColumn => {
    return { ...column(head, share), align: 'middle' };
  };
  return [
    column('gear', 3),
    number('passes', 3),
    number('spare', 3),
    column('first', 6),
    { ...number('passes', 4), head: voice.say('margin.least', { unit }) },
  ];
}
