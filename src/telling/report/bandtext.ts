import type { Train } from '../../engine/train/index.ts';
import type { BandJudgement } from '../../shop/bands/index.ts';
import { bandTexts, keyOf, visible, voiceOf } from '../narrative/index.ts';
import { choiceLines, remarkLines } from './choice.ts';
import { type Page, paragraph, section } from '../text/index.ts';

/** Each band at its drum: what is right, how far to back off, or the rod that sets it. */
export function bandText(train: Train, judged: readonly BandJudgement[], page: Page): string {
  const voice = voiceOf(page.language);
  const cautions = ['springs', 'maker'].flatMap((what) => {
    return paragraph(`! ${voice.say('plan.caution.of', { what })}`, page, '  ');
  });
  const title = { train: visible(train.name), bands: judged.length };
  return [
    ...paragraph(voice.say('band.title', title), page).map(page.ink.strong),
    ...section(voice.say('plan.caution'), cautions, page),
    '',
    ...paragraph(voice.say('band.how'), page),
    ...judged.flatMap((its) => ['', ...bandLines(its, page)]),
    '',
    ...paragraph(voice.say('band.legend'), page).map(page.ink.faint),
  ].join('\n');
}

function bandLines(judgement: BandJudgement, page: Page): string[] {
  const voice = voiceOf(page.language);
  const { band, travel, selection, remarks } = judgement;
  const lines = (text: string) => paragraph(text, page);
  const { against, besides } = remarkLines(remarks, page);
  const part = keyOf(band.shelf?.part ?? '');
  return [
    ...lines(visible(band.device)).map(page.ink.strong),
    ...against,
    ...bandTexts(judgement, voice, page.unit).flatMap(lines),
    ...section(voice.say('pack.first'), besides, page),
    ...section(
      voice.say('pack.shelf', { part }),
      selection && travel ? choiceLines(selection, part, travel.clearance, page) : [],
      page,
    ),
  ];
}
