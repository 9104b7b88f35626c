import { opposite } from '../../engine/linear/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { type Length, lengthFrom } from '../../shop/length/index.ts';
import { speakAgainst } from '../../shop/limits/index.ts';
import type { PreloadJudgement } from '../../shop/preload/index.ts';
import {
  asFineAs,
  boundsText,
  keyOf,
  lengthText,
  torqueBoundsText,
  torqueText,
  visible,
  voiceOf,
} from '../narrative/index.ts';
import { gapTexts, remarkLines, thickerTexts } from './choice.ts';
import { type Page, paragraph, section } from './page.ts';

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
  const { preload, state, by, torque, limit, verdict, squeeze, remarks } = judgement;
  const lines = (text: string) => paragraph(text, page);
  const { against, besides } = remarkLines(remarks, page);
  const told = torque && {
    by: by ?? '',
    torque: torqueText(torque, voice),
    verdict: keyOf(verdict ?? 'none'),
  };
  return [
    ...lines(visible(preload.bearings)).map(page.ink.strong),
    ...against,
    ...(told ? lines(voice.say('preload.turning', told)) : []),
    ...(limit
      ? lines(voice.say('preload.limits', { state, limits: torqueBoundsText(limit, voice) }))
      : []),
    // What is in doubt is read again before anything is done.
    ...(verdict && !speakAgainst(remarks)
      ? lines(voice.say('preload.do', { verdict: keyOf(verdict) }))
      : []),
    ...(squeeze && (squeeze.least || squeeze.most)
      ? lines(voice.say('preload.squeeze', { limits: boundsText(squeeze, voice, page.unit) }))
      : []),
    ...section(voice.say('pack.first'), besides, page),
    ...shimLines(judgement, page),
  ];
}

// What the play asks of the part, and the best of the shelf.
function shimLines({ preload, gap, tighter, selection }: PreloadJudgement, page: Page): string[] {
  if (!gap) return [];
  const voice = voiceOf(page.language);
  const told = (length: Length) => lengthText(length, voice, page.unit);
  const tool = gap.clearance;
  const fitted = preload.shelf && (lengthFrom(preload.shelf.fitted) as Length);
  const part = keyOf(preload.shelf?.part ?? '');
  const best = selection?.best;
  return [
    '',
    ...paragraph(
      voice.say('preload.gap', {
        has: fitted ? 'yes' : 'no',
        fitted: fitted ? told(fitted) : '',
        gap: told(tool),
      }),
      page,
    ),
    ...(tighter
      ? paragraph(
          voice.say('preload.tighter', { part, ...thickerTexts(tighter, tool, page) }),
          page,
        )
      : []),
    ...(best && best.verdict === 'inside'
      ? paragraph(
          voice.say('preload.choice', {
            part,
            size: told(best.size),
            squeeze: told(asFineAs(opposite(best.predicted.um), tool)),
            worst: gapTexts(best.predicted, tool, page).worst,
            safe: best.safe ? 'yes' : 'no',
          }),
          page,
        )
      : []),
  ];
}
