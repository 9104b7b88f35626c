import type { Train } from '../../engine/train/index.ts';
import type { Length } from '../../shop/length/index.ts';
import type { PackJudgement } from '../../shop/packs/index.ts';
import { toldApart } from '../../shop/limits/index.ts';
import {
  asFineAs,
  boundsText,
  clearanceWayText,
  keyOf,
  lengthText,
  visible,
  voiceOf,
} from '../narrative/index.ts';
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
import { table } from './table.ts';

/** The packs that were measured: what is right, what to look at first, and what to fit. */
export function packText(train: Train, judged: readonly PackJudgement[], page: Page): string {
  const voice = voiceOf(page.language);
  const onAir = judged.some(({ measured }) => measured.some(({ way }) => way === 'on air'));
  const cautions = ['springs', ...(onAir ? ['air'] : []), 'maker'].flatMap((what) => {
    return paragraph(`! ${voice.say('plan.caution.of', { what })}`, page, '  ');
  });
  const title = { train: visible(train.name), packs: judged.length };
  return [
    ...paragraph(voice.say('pack.title', title), page).map(page.ink.strong),
    ...section(voice.say('plan.caution'), cautions, page),
    ...judged.flatMap((its) => ['', ...packLines(its, page)]),
    '',
    ...paragraph(voice.say('pack.legend'), page).map(page.ink.faint),
  ].join('\n');
}

function packLines(judgement: PackJudgement, page: Page): string[] {
  const voice = voiceOf(page.language);
  const { pack, frictions, remarks, selection, judged } = judgement;
  const { against, besides } = remarkLines(remarks, page);
  return [
    ...paragraph(voice.say('pack.device', { device: visible(pack.device), frictions }), page).map(
      page.ink.strong,
    ),
    ...against,
    ...answerLines(judgement, page),
    ...section(voice.say('pack.first'), besides, page),
    ...section(voice.say('pack.measured'), measuredLines(judgement, page), page),
    ...section(
      voice.say('pack.shelf', { part: keyOf(pack.shelf?.part ?? '') }),
      selection && judged && pack.shelf
        ? choiceLines(selection, pack.shelf.part, judged.clearance, page)
        : [],
      page,
    ),
    ...section(voice.say('pack.wear'), wearLines(judgement, page), page),
  ];
}

// The verdict, its limits, what the file's own sizes would leave, and the step gauge.
function answerLines(judgement: PackJudgement, page: Page): string[] {
  const voice = voiceOf(page.language);
  const { judged, eachFriction, verdict, bounds, drawn, draws, gauge, thicker, again } = judgement;
  const told = (length: Length) => lengthText(length, voice, page.unit);
  const lines: string[] = [];
  if (again) lines.push(...closedLines(again, bounds, page));
  if (judged && again) {
    const text = voice.say('pack.before', { clearance: told(judged.clearance) });
    lines.push(...paragraph(text, page));
  } else if (judged) {
    const text = voice.say('pack.clearance', {
      clearance: told(toldApart(judged.clearance, bounds ?? {})),
      each: eachFriction ? told(eachFriction) : '',
      has: eachFriction ? 'yes' : 'no',
      verdict: verdictText(verdict, voice),
    });
    lines.push(...paragraph(text, page).map(verdict === 'inside' ? same : page.ink.bad));
  }
  if (gauge) {
    const text = voice.say('pack.gauge', {
      does: gauge.fits ? 'yes' : 'no',
      fits: gauge.fits ? told(gauge.fits) : '',
      stops: gauge.doesNotFit ? 'yes' : 'no',
      not: gauge.doesNotFit ? told(gauge.doesNotFit) : '',
      verdict: verdictText(gauge.verdict, voice),
    });
    lines.push(...paragraph(text, page));
  }
  if (bounds && (bounds.least || bounds.most)) {
    const limits = boundsText(bounds, voice, page.unit);
    const each = judgement.pack.limits?.clearance ? 'no' : 'yes';
    lines.push(...paragraph(voice.say('pack.limits', { limits, each }), page));
  }
  if (judged && thicker) {
    const values = thickerTexts(thicker, judged.clearance, page);
    lines.push(...paragraph(voice.say('pack.thicker', values), page));
  }
  if (drawn) {
    const values = gapTexts(drawn, fineTool(judged?.clearance), page);
    lines.push(...paragraph(voice.say('pack.drawn', values), page));
  }
  if (draws) {
    lines.push('', ...drawsLines(draws, judged?.clearance ?? HUNDREDTHS, page));
  }
  return lines;
}

const same = (text: string) => text;

function measuredLines({ measured }: PackJudgement, page: Page): string[] {
  const voice = voiceOf(page.language);
  const told = (length: Length) => lengthText(length, voice, page.unit);
  const rows = measured.map((its) => {
    const { clearance, places, spreadUm, worst, way } = its;
    const air = its.pressure === undefined ? '' : visible(its.pressure);
    return [
      voice.say('pack.way', {
        way: clearanceWayText(way, voice),
        has: air === '' ? 'no' : its.squash ? 'squash' : 'air',
        air,
        squash: its.squash ? told(its.squash) : '',
      }),
      told(clearance),
      places.length > 1 ? told(asFineAs(spreadUm, clearance)) : '',
      places.length > 1
        ? voice.say('pack.place', { place: worst + 1, reading: told(places[worst] as Length) })
        : '',
    ];
  });
  return rows.length === 0 ? [] : table(['way', 'clearance', 'spread', 'worst'], rows, page);
}

function wearLines({ wear }: PackJudgement, page: Page): string[] {
  const voice = voiceOf(page.language);
  const rows = wear.map(({ what, worst, place, bounds, verdict }) => [
    voice.say('pack.wear of', { what }),
    voice.say('pack.place', {
      place,
      reading: lengthText(toldApart(worst, bounds ?? {}), voice, page.unit),
    }),
    bounds && (bounds.least || bounds.most) ? boundsText(bounds, voice, page.unit) : '',
    verdictText(verdict, voice),
  ]);
  return rows.length === 0 ? [] : table(['part', 'worst', 'limit', 'verdict'], rows, page);
}
