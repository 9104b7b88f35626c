import type { Train } from '../../engine/train/index.ts';
import type { PreloadJudgement } from '../../shop/preload/index.ts';
import { preloadTexts, shimTexts } from '../narrative/index.ts';
import { type Page, paragraph } from '../text/index.ts';
import { measuredText, thingLines } from './measured.ts';

/** The preload of bearings: the torque that proves it, and the shim or spacer that sets it. */
export function preloadText(train: Train, judged: readonly PreloadJudgement[], page: Page): string {
  const { voice } = page;
  const kind = {
    title: voice.say('preload.title', { train: voice.train(train), count: judged.length }),
    cautions: ['hands'],
    body: [
      '',
      ...paragraph(voice.say('preload.how'), page),
      ...judged.flatMap((its) => ['', ...bearingLines(its, page)]),
    ],
    legend: voice.say('preload.legend'),
  };
  return measuredText(kind, page);
}

function bearingLines(judgement: PreloadJudgement, page: Page): string[] {
  const { voice } = page;
  const lines = (text: string) => paragraph(text, page);
  const shim = shimTexts(judgement, voice, page.unit);
  const thing = {
    head: [voice.called(judgement.preload.bearings)],
    remarks: judgement.remarks,
    answer: preloadTexts(judgement, voice, page.unit).flatMap(lines),
    own: shim.length > 0 ? ['', ...shim.flatMap(lines)] : [],
  };
  return thingLines(thing, page);
}
