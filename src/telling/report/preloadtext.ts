import type { Train } from '../../engine/train/index.ts';
import type { PreloadJudgement } from '../../shop/preload/index.ts';
import { preloadTexts, shimTexts, visible, voiceOf } from '../narrative/index.ts';
import { remarkLines } from './choice.ts';
import { type Page, paragraph, section } from '../text/index.ts';

/** The preload of bearings: the torque that proves it, and the shim or spacer that sets it. */
export function preloadText(train: Train, judged: readonly PreloadJudgement[], page: Page): string {
  const voice = voiceOf(page.language);
  const cautions = ['hands', 'maker'].flatMap((what) => {
    return paragraph(`! ${voice.say('plan.caution.of', { what })}`, page, '  ');
  });
  const title = { train: visible(train.name), count: judged.length };
  return [
    ...paragraph(voice.say('preload.title', title), page).map(page.ink.strong),
    ...section(voice.say('plan.caution'), cautions, page),
    '',
    ...paragraph(voice.say('preload.how'), page),
    ...judged.flatMap((its) => ['', ...bearingLines(its, page)]),
    '',
    ...paragraph(voice.say('preload.legend'), page).map(page.ink.faint),
  ].join('\n');
}

function bearingLines(judgement: PreloadJudgement, page: Page): string[] {
  const voice = voiceOf(page.language);
  const lines = (text: string) => paragraph(text, page);
  const { against, besides } = remarkLines(judgement.remarks, page);
  const shim = shimTexts(judgement, voice, page.unit);
  return [
    ...lines(visible(judgement.preload.bearings)).map(page.ink.strong),
    ...against,
    ...preloadTexts(judgement, voice, page.unit).flatMap(lines),
    ...section(voice.say('pack.first'), besides, page),
    ...(shim.length > 0 ? ['', ...shim.flatMap(lines)] : []),
  ];
}
