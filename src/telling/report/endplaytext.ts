import type { Train } from '../../engine/train/index.ts';
import type { EndPlayJudgement } from '../../shop/endplay/index.ts';
import { toldApart } from '../../shop/limits/index.ts';
import type { Length } from '../../shop/length/index.ts';
import { asFineAs, boundsText, keyOf, lengthText, visible, voiceOf } from '../narrative/index.ts';
import {
  choiceLines,
  closedLines,
  fineTool,
  gapTexts,
  HUNDREDTHS,
  remarkLines,
  thickerTexts,
  verdictText,
} from './choice.ts';
import { drawsLines } from './drawstext.ts';
import { type Page, paragraph, section } from './page.ts';

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
  const { endPlay, measured, bounds, verdict, thicker, drawn, draws, selection, remarks } =
    judgement;
  const { again } = judgement;
  const told = (length: Length) => lengthText(length, voice, page.unit);
  const tool = measured?.clearance ?? HUNDREDTHS;
  const lines = (text: string) => paragraph(text, page);
  const { against, besides } = remarkLines(remarks, page);
  const reading = measured && {
    clearance: told(toldApart(measured.clearance, bounds ?? {})),
    verdict: verdictText(verdict, voice),
    places: measured.places.length,
    spread: told(asFineAs(measured.spreadUm, tool)),
    worst: told(measured.places[measured.worst] as Length),
  };
  const part = endPlay.shelf?.part ?? '';
  return [
    ...lines(visible(endPlay.shaft)).map(page.ink.strong),
    ...(endPlay.measure === 'backlash' ? lines(voice.say('endplay.backlash')) : []),
    ...against,
    ...(again ? closedLines(again, bounds, page) : []),
    ...(reading
      ? lines(
          again
            ? voice.say('pack.before', { clearance: reading.clearance })
            : voice.say('endplay.measured', reading),
        )
      : []),
    ...(bounds && (bounds.least || bounds.most)
      ? lines(
          voice.say('pack.limits', { limits: boundsText(bounds, voice, page.unit), each: 'no' }),
        )
      : []),
    ...(thicker ? lines(voice.say('endplay.add', thickerTexts(thicker, tool, page))) : []),
    ...(drawn ? lines(voice.say('endplay.stack', gapTexts(drawn, fineTool(tool), page))) : []),
    ...(draws ? ['', ...drawsLines(draws, tool, page)] : []),
    ...section(voice.say('pack.first'), besides, page),
    ...section(
      voice.say('pack.shelf', { part: keyOf(part) }),
      selection ? choiceLines(selection, part, tool, page) : [],
      page,
    ),
  ];
}
