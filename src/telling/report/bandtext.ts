import { ZERO } from '../../engine/linear/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { BandJudgement } from '../../shop/bands/index.ts';
import { toldApart } from '../../shop/limits/index.ts';
import { type Length, lengthFrom } from '../../shop/length/index.ts';
import {
  asFineAs,
  backOffText,
  boundsText,
  keyOf,
  lengthText,
  turnsText,
  visible,
  voiceOf,
} from '../narrative/index.ts';
import { choiceLines, remarkLines, verdictText } from './choice.ts';
import { type Page, paragraph, section } from './page.ts';

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
  const { band, travel, clearance, allRound, bounds, backOff, selection, remarks } = judgement;
  const told = (length: Length) => lengthText(length, voice, page.unit);
  const lines = (text: string) => paragraph(text, page);
  const { against, besides } = remarkLines(remarks, page);
  const part = keyOf(band.shelf?.part ?? '');
  return [
    ...lines(visible(band.device)).map(page.ink.strong),
    ...against,
    ...(travel && clearance
      ? lines(measuredText(judgement, toldApart(travel.clearance, bounds ?? {}), clearance, page))
      : []),
    ...(allRound ? lines(voice.say('band.all round', { clearance: told(allRound) })) : []),
    ...(bounds && (bounds.least || bounds.most)
      ? lines(
          voice.say('band.limits', {
            limits: boundsText(bounds, voice, page.unit),
            ...ofWhat(band),
          }),
        )
      : []),
    ...(backOff ? lines(backOffText(backOff, voice)) : []),
    ...section(voice.say('pack.first'), besides, page),
    ...section(
      voice.say('pack.shelf', { part }),
      selection && travel ? choiceLines(selection, part, travel.clearance, page) : [],
      page,
    ),
  ];
}

// What was read, what it is at the drum, and the verdict of it.
function measuredText(
  { band, turns, by, travel, verdict }: BandJudgement,
  mean: Length,
  clearance: Length,
  page: Page,
): string {
  const voice = voiceOf(page.language);
  const told = (length: Length) => lengthText(length, voice, page.unit);
  const { places = [], spreadUm, worst = 0 } = travel ?? {};
  return voice.say('band.measured', {
    by: by ?? '',
    ...turnsText(turns ?? ZERO, voice),
    pitch: band.pitch === undefined ? '' : told(lengthFrom(band.pitch) as Length),
    travel: told(mean),
    lever: voice.written(`${band.lever ?? 1}`),
    clearance: told(clearance),
    verdict: verdictText(verdict, voice),
    places: places.length,
    spread: spreadUm ? told(asFineAs(spreadUm, mean)) : '',
    worst: told(places[worst] ?? mean),
  });
}

// Limits of the clearance are shown as what they are for the travel.
function ofWhat({ limits, lever = 1 }: BandJudgement['band']) {
  return { from: limits?.travel || lever === 1 ? 'itself' : 'clearance' };
}
