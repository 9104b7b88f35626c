import { speakAgainst } from '../../shop/limits/index.ts';
import type { PreloadJudgement } from '../../shop/preload/index.ts';
import {
  boundsText,
  keyOf,
  remarkText,
  torqueBoundsText,
  torqueText,
  type Voice,
} from '../narrative/index.ts';
import type { SheetBlock, SheetCell, SheetColumn } from './document.ts';
import { headOf } from './filled.ts';
import { type Chosen, choiceTable, limitBlocks, shelfBlocks, told } from './measured.ts';

/** A preload: its limits, boxes for the torque that proves it and for the play, and the part. */
export function preloadBlock(
  judgement: PreloadJudgement,
  { voice, chosen }: { readonly voice: Voice; readonly chosen: Chosen | undefined },
): SheetBlock {
  const { preload, state, by, torque, limit, verdict, gap, squeeze, selection } = judgement;
  const boxes = Array.from({ length: BOXES }, (_, i) => told(gap?.places[i], voice));
  const empty = boxes.map(() => '');
  const columns: SheetColumn[] = [
    { head: voice.say('head', { head: 'way' }), width: { mm: 38 } },
    ...boxes.map((_, i): SheetColumn => ({
      head: `${i + 1}`,
      width: { share: 1 },
      align: 'middle',
    })),
    { head: headOf('mean', voice), width: { share: 1 }, align: 'middle' },
  ];
  const rows: SheetCell[][] = (['turning', 'pull'] as const).map((way) => {
    const mean = by === way && torque ? torqueText(torque, voice) : '';
    return [voice.say('sheet.measure.preload by', { by: way }), ...empty, mean];
  });
  rows.push([
    voice.say('sheet.measure.preload by', { by: 'gap' }),
    ...boxes,
    told(gap?.clearance, voice),
  ]);
  const remarks = judgement.remarks.filter(({ remark }) => remark !== 'nothing read');
  const line = (text: string, look?: 'strong'): SheetBlock => {
    return { block: 'paragraph', text, ...(look && { look }) };
  };
  return {
    block: 'together',
    blocks: [
      {
        block: 'heading',
        text: voice.say('sheet.measure.preload', { bearings: voice.called(preload.bearings) }),
      },
      ...(limit
        ? [line(voice.say('preload.limits', { state, limits: torqueBoundsText(limit, voice) }))]
        : limitBlocks(undefined, voice)),
      ...(squeeze
        ? [line(voice.say('preload.squeeze', { limits: boundsText(squeeze, voice) }))]
        : []),
      ...(preload.shelf ? shelfBlocks(preload.shelf, voice) : []),
      { block: 'table', columns, rows, rowMm: 10 },
      ...(verdict && !speakAgainst(judgement.remarks)
        ? [line(voice.say('preload.do', { verdict: keyOf(verdict) }), 'strong')]
        : []),
      ...remarks.map((remark) => line(remarkText(remark, voice), 'strong')),
      choiceTable(
        {
          before: gap?.clearance,
          after: undefined,
          fitted: preload.shelf?.fitted,
          selection,
          chosen,
        },
        voice,
      ),
    ],
  };
}

const BOXES = 4;
