import type { BandJudgement } from '../../shop/bands/index.ts';
import { speakAgainst } from '../../shop/limits/index.ts';
import type { WearJudgement } from '../../shop/wear/index.ts';
import {
  backOffText,
  boundsText,
  keyOf,
  remarkText,
  turnsText,
  type Voice,
} from '../narrative/index.ts';
import type { SheetBlock, SheetCell, SheetColumn } from './document.ts';
import { headOf } from './filled.ts';
import {
  type Chosen,
  choiceTable,
  limitBlocks,
  remarkBlocks,
  shelfBlocks,
  told,
} from './measured.ts';

/** A band: its limits, boxes for turns or travel, and the turns or the rod that set it. */
export function bandBlock(
  judgement: BandJudgement,
  { voice, chosen }: { readonly voice: Voice; readonly chosen: Chosen | undefined },
): SheetBlock {
  const { band, turns, by, travel, backOff, selection } = judgement;
  const places = by === 'travel' ? (travel?.places ?? []) : [];
  const boxes = Array.from({ length: BOXES }, (_, i) => told(places[i], voice));
  const back = turns ? turnsText(turns, voice).turns : '';
  const mean = told(travel?.clearance, voice);
  const rows: SheetCell[][] = [
    ...(band.pitch === undefined
      ? []
      : [[voice.say('sheet.measure.turns'), back, ...boxes.slice(1).map(() => ''), back && mean]]),
    [voice.say('sheet.measure.travel'), ...boxes, by === 'travel' ? mean : ''],
  ];
  const columns: SheetColumn[] = [
    { head: voice.say('head', { head: 'way' }), width: { mm: 38 } },
    ...boxes.map((_, i): SheetColumn => ({
      head: `${i + 1}`,
      width: { share: 1 },
      align: 'middle',
    })),
    { head: headOf('mean', voice), width: { share: 1 }, align: 'middle' },
  ];
  const remarks = judgement.remarks.filter(({ remark }) => remark !== 'nothing read');
  return {
    block: 'together',
    blocks: [
      {
        block: 'heading',
        text: voice.say('sheet.measure.band', { band: voice.called(band.device) }),
      },
      ...limitsOf(judgement, voice),
      ...(backOff ? [{ block: 'paragraph' as const, text: backOffText(backOff, voice) }] : []),
      ...(band.shelf ? shelfBlocks(band.shelf, voice) : []),
      { block: 'table', columns, rows, rowMm: 10 },
      ...remarkBlocks(remarks, voice),
      choiceTable(
        {
          before: travel?.clearance,
          after: undefined,
          fitted: band.shelf?.fitted,
          selection,
          chosen,
        },
        voice,
      ),
    ],
  };
}

// Limits of the clearance are told as what they are for the travel.
function limitsOf({ band, bounds }: BandJudgement, voice: Voice): SheetBlock[] {
  if (!bounds?.least && !bounds?.most) return limitBlocks(undefined, voice);
  const from = band.limits?.travel || (band.lever ?? 1) === 1 ? 'itself' : 'clearance';
  const limits = boundsText(bounds, voice);
  return [{ block: 'paragraph', text: voice.say('band.limits', { limits, from }) }];
}

const BOXES = 4;

/** What wears, a row each: the limit, a box for the worst reading, the verdict and who says so. */
export function wornBlocks(judged: readonly WearJudgement[], voice: Voice): SheetBlock[] {
  if (judged.length === 0) return [];
  const rows = judged.map(({ check, bounds, worst, verdict }): SheetCell[] => [
    voice.called(check.part),
    voice.say('wear.kind', { kind: keyOf(check.measure) }),
    bounds && (bounds.least || bounds.most) ? boundsText(bounds, voice) : '',
    told(worst, voice),
    worst ? voice.say('verdict', { verdict: keyOf(verdict ?? 'none') }) : '',
    '',
  ]);
  const share = (head: string, of: number): SheetColumn => ({ head, width: { share: of } });
  const columns = [
    share(voice.say('head', { head: 'part' }), 3),
    share(voice.say('head', { head: 'measure' }), 3),
    share(voice.say('head', { head: 'limit' }), 5),
    share(headOf('reading', voice), 3),
    share(voice.say('head', { head: 'verdict' }), 2),
    share(headOf('initials', voice), 2),
  ];
  const remarks = judged.flatMap(({ check, remarks: all }) => {
    const against = all.filter((its) => speakAgainst([its]));
    return against.map((remark): SheetBlock => {
      const text = `${voice.called(check.part)}: ${remarkText(remark, voice)}`;
      return { block: 'paragraph', text, look: 'strong' };
    });
  });
  return [
    { block: 'heading', text: voice.say('sheet.measure.wear') },
    { block: 'table', columns, rows, rowMm: 10 },
    ...remarks,
  ];
}
