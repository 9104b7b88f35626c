import type { Train } from '../../engine/train/index.ts';
import type { Length } from '../../shop/length/index.ts';
import type { PackJudgement } from '../../shop/packs/index.ts';
import { toldApart } from '../../shop/limits/index.ts';
import {
  asFineAs,
  boundsText,
  clearanceWayText,
  HUNDREDTHS,
  lengthText,
  packTexts,
  verdictText,
  visible,
} from '../narrative/index.ts';
import { type Page, paragraph, section, table } from '../text/index.ts';
import { drawsLines } from './drawstext.ts';
import { measuredText, thingLines } from './measured.ts';

/** The packs that were measured: what is right, what to look at first, and what to fit. */
export function packText(train: Train, judged: readonly PackJudgement[], page: Page): string {
  const { voice } = page;
  const onAir = judged.some(({ measured }) => measured.some(({ way }) => way === 'on air'));
  const kind = {
    title: voice.say('pack.title', { train: voice.train(train), packs: judged.length }),
    cautions: ['springs', ...(onAir ? ['air'] : [])],
    body: judged.flatMap((its) => ['', ...packLines(its, page)]),
    legend: voice.say('pack.legend'),
  };
  return measuredText(kind, page);
}

function packLines(judgement: PackJudgement, page: Page): string[] {
  const { voice } = page;
  const { pack, frictions, remarks, selection, judged } = judgement;
  const thing = {
    head: [voice.say('pack.device', { device: voice.called(pack.device), frictions })],
    remarks,
    answer: answerLines(judgement, page),
    own: section(voice.say('pack.measured'), measuredLines(judgement, page), page),
    shelf: { part: pack.shelf?.part, selection, tool: judged?.clearance },
  };
  const wear = section(voice.say('pack.wear'), wearLines(judgement, page), page);
  return [...thingLines(thing, page), ...wear];
}

function answerLines(judgement: PackJudgement, page: Page): string[] {
  const { judged, verdict, draws, again } = judgement;
  const [first = '', ...others] = packTexts(judgement, page.voice, page.unit);
  const bad = judged && !again && verdict !== 'inside';
  return [
    ...paragraph(first, page).map(bad ? page.ink.bad : same),
    ...others.flatMap((text) => paragraph(text, page)),
    ...(draws ? ['', ...drawsLines(draws, judged?.clearance ?? HUNDREDTHS, page)] : []),
  ];
}

const same = (text: string) => text;

function measuredLines({ measured }: PackJudgement, page: Page): string[] {
  const { voice } = page;
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
  const { voice } = page;
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
