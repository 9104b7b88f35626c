import type { Train } from '../../engine/train/index.ts';
import type { BandJudgement } from '../../shop/bands/index.ts';
import { bandTexts } from '../narrative/index.ts';
import { type Page, paragraph } from '../text/index.ts';
import { measuredText, thingLines } from './measured.ts';

/** Each band at its drum: what is right, how far to back off, or the rod that sets it. */
export function bandText(train: Train, judged: readonly BandJudgement[], page: Page): string {
  const { voice } = page;
  const kind = {
    title: voice.say('band.title', { train: voice.train(train), bands: judged.length }),
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
  const texts = bandTexts(judgement, page.voice, page.unit);
  const thing = {
    head: [page.voice.called(band.device)],
    remarks,
    answer: texts.flatMap((text) => paragraph(text, page)),
    shelf: { part: band.shelf?.part, selection, tool: travel?.clearance },
  };
  return thingLines(thing, page);
}
