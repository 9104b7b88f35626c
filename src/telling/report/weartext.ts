import type { Train } from '../../engine/train/index.ts';
import type { Length } from '../../shop/length/index.ts';
import type { WearJudgement } from '../../shop/wear/index.ts';
import { speakAgainst, toldApart } from '../../shop/limits/index.ts';
import {
  boundsText,
  keyOf,
  lengthText,
  remarkText,
  verdictText,
  wearTexts,
} from '../narrative/index.ts';
import { type Page, paragraph, section, table } from '../text/index.ts';
import { measuredText } from './measured.ts';

/** What wears: each reading against its limit in a table, and then what to do about each. */
export function wearText(train: Train, judged: readonly WearJudgement[], page: Page): string {
  const { voice } = page;
  const springs = judged.some(({ check }) => check.measure === 'spring length');
  const kinds = [...new Set(judged.map(({ check }) => check.measure))];
  const body = [
    ...section(
      voice.say('pack.first'),
      judged.flatMap((its) => againstLines(its, page)),
      page,
    ),
    ...section(voice.say('pack.measured'), rowsOf(judged, page), page),
    ...section(
      voice.say('wear.do'),
      judged.flatMap((its) => doingLines(its, page)),
      page,
    ),
    ...section(
      voice.say('wear.how'),
      kinds.flatMap((kind) => {
        return paragraph(`- ${voice.say('wear.how of', { kind: keyOf(kind) })}`, page, '  ');
      }),
      page,
    ),
  ];
  const kind = {
    title: voice.say('wear.title', { train: voice.train(train), parts: judged.length }),
    cautions: springs ? ['springs'] : [],
    body,
    legend: voice.say('wear.legend'),
  };
  return measuredText(kind, page);
}

function rowsOf(judged: readonly WearJudgement[], page: Page): string[] {
  const { voice } = page;
  const told = (length: Length | undefined) => {
    return length ? lengthText(length, voice, page.unit) : '';
  };
  const rows = judged.map(({ check, worst, bounds, verdict }) => [
    voice.called(check.part),
    voice.say('wear.kind', { kind: keyOf(check.measure) }),
    told(worst && toldApart(worst, bounds ?? {})),
    bounds && (bounds.least || bounds.most) ? boundsText(bounds, voice, page.unit) : '',
    verdictText(verdict, voice),
  ]);
  return table(['part', 'measure', 'worst', 'limit', 'verdict'], rows, page);
}

// What speaks against believing a reading stands above its verdict.
function againstLines({ check, remarks }: WearJudgement, page: Page): string[] {
  const { voice } = page;
  const against = remarks.filter((its) => speakAgainst([its]));
  return against.flatMap((remark) => {
    const line = `! ${voice.called(check.part)}: ${remarkText(remark, voice, page.unit)}`;
    return paragraph(line, page, '  ').map(page.ink.odd);
  });
}

function doingLines(judgement: WearJudgement, page: Page): string[] {
  const { check, verdict, remarks } = judgement;
  const { voice } = page;
  const besides = remarks.filter((its) => !speakAgainst([its]));
  const warned = besides.map((remark) => remarkText(remark, voice, page.unit));
  const doing = wearTexts(judgement, voice);
  const ink = verdict === 'inside' ? (text: string) => text : page.ink.odd;
  return [...warned, ...doing].flatMap((text) => {
    const line = `${verdict === 'inside' ? '-' : '!'} ${voice.called(check.part)}: ${text}`;
    return paragraph(line, page, '  ').map(ink);
  });
}
