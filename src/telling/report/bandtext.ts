import type { Train } from '../../engine/train/index.ts';
import type { BandJudgement } from '../../shop/bands/index.ts';
import { bandTexts, visible, voiceOf } from '../narrative/index.ts';
import { type Page, paragraph } from '../text/index.ts';
import { measuredText, thingLines } from './measured.ts';

/** Each band at its drum: what is right, how far to back off, or the rod that sets it. */
export function bandText(train: Train, judged: readonly BandJudgement[], page: Page): string {
  const voice = voiceOf(page.language);
  const kind = {
    title: voice.say('band.title', { train: visible(train.name), bands: judged.length }),
    cautions: ['springs'],
    body: [
      '',
      ...paragraph(voice.say('band.how'), page),
      ...judged.flatMap((its) => ['', ...bandLines(its, page)]),
    ],
    legend: voice.say('band.legend'),
  };
  return measuredText(kind, page);
}

function bandLines(judgement: BandJudgement, page: Page): string[] {
  const { band, travel, selection, remarks } = judgement;
  const texts = bandTexts(judgement, voiceOf(page.language), page.unit);
  const thing = {
    head: [visible(band.device)],
    remarks,
    answer: texts.flatMap((text) => paragraph(text, page)),
    shelf: { part: band.shelf?.part, selection, tool: travel?.clearance },
  };
  return thingLines(thing, page);
}
