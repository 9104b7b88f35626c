import type { Train } from '../../engine/train/index.ts';
import type { EndPlayJudgement } from '../../shop/endplay/index.ts';
import { HUNDREDTHS, playTexts } from '../narrative/index.ts';
import { type Page, paragraph } from '../text/index.ts';
import { drawsLines } from './drawstext.ts';
import { measuredText, thingLines } from './measured.ts';

/** The end play of each shaft: what is right, and the washer or race that sets it. */
export function endPlayText(train: Train, judged: readonly EndPlayJudgement[], page: Page): string {
  const { voice } = page;
  const along = judged.filter(({ endPlay }) => endPlay.measure !== 'backlash').length;
  const title = {
    train: voice.train(train),
    kind: along === judged.length ? 'along' : along === 0 ? 'teeth' : 'both',
    shafts: judged.length,
  };
  const kind = {
    title: voice.say('endplay.title', title),
    cautions: ['weight'],
    body: [
      ...(along > 0 ? ['', ...paragraph(voice.say('endplay.how'), page)] : []),
      ...judged.flatMap((its) => ['', ...shaftLines(its, page)]),
    ],
    legend: voice.say('endplay.legend'),
  };
  return measuredText(kind, page);
}

function shaftLines(judgement: EndPlayJudgement, page: Page): string[] {
  const { voice } = page;
  const { endPlay, measured, draws, selection, remarks } = judgement;
  const tool = measured?.clearance ?? HUNDREDTHS;
  const backlash = endPlay.measure === 'backlash' ? [voice.say('endplay.backlash')] : [];
  const thing = {
    head: [voice.called(endPlay.shaft), ...backlash],
    remarks,
    answer: [
      ...playTexts(judgement, voice, page.unit).flatMap((text) => paragraph(text, page)),
      ...(draws ? ['', ...drawsLines(draws, tool, page)] : []),
    ],
    shelf: { part: endPlay.shelf?.part, selection, tool },
  };
  return thingLines(thing, page);
}
