import type { Train } from '../../engine/train/index.ts';
import type { EndPlayJudgement } from '../../shop/endplay/index.ts';
import { HUNDREDTHS, keyOf, playTexts, visible, voiceOf } from '../narrative/index.ts';
import { choiceLines, remarkLines } from './choice.ts';
import { drawsLines } from './drawstext.ts';
import { type Page, paragraph, section } from '../text/index.ts';

/** The end play of each shaft: what is right, and the washer or race that sets it. */
export function endPlayText(train: Train, judged: readonly EndPlayJudgement[], page: Page): string {
  const voice = voiceOf(page.language);
  const cautions = ['weight', 'maker'].flatMap((what) => {
    return paragraph(`! ${voice.say('plan.caution.of', { what })}`, page, '  ');
  });
  const along = judged.filter(({ endPlay }) => endPlay.measure !== 'backlash').length;
  const title = {
    train: visible(train.name),
    kind: along === judged.length ? 'along' : along === 0 ? 'teeth' : 'both',
    shafts: judged.length,
  };
  return [
    ...paragraph(voice.say('endplay.title', title), page).map(page.ink.strong),
    ...section(voice.say('plan.caution'), cautions, page),
    ...(along > 0 ? ['', ...paragraph(voice.say('endplay.how'), page)] : []),
    ...judged.flatMap((its) => ['', ...shaftLines(its, page)]),
    '',
    ...paragraph(voice.say('endplay.legend'), page).map(page.ink.faint),
  ].join('\n');
}

function shaftLines(judgement: EndPlayJudgement, page: Page): string[] {
  const voice = voiceOf(page.language);
  const { endPlay, measured, draws, selection, remarks } = judgement;
  const tool = measured?.clearance ?? HUNDREDTHS;
  const lines = (text: string) => paragraph(text, page);
  const { against, besides } = remarkLines(remarks, page);
  const part = endPlay.shelf?.part ?? '';
  return [
    ...lines(visible(endPlay.shaft)).map(page.ink.strong),
    ...(endPlay.measure === 'backlash' ? lines(voice.say('endplay.backlash')) : []),
    ...against,
    ...playTexts(judgement, voice, page.unit).flatMap(lines),
    ...(draws ? ['', ...drawsLines(draws, tool, page)] : []),
    ...section(voice.say('pack.first'), besides, page),
    ...section(
      voice.say('pack.shelf', { part: keyOf(part) }),
      selection ? choiceLines(selection, part, tool, page) : [],
      page,
    ),
  ];
}
