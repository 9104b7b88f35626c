import type { MarginReport } from '../../asking/gears/index.ts';
import { isSpan, type Quantity } from '../../engine/flow/index.ts';
import { fraction, type Rational, times, toNumber } from '../../engine/linear/index.ts';
import { toldIn } from '../../engine/quantity/index.ts';
import {
  type DeviceMargin,
  firstToSlip,
  type GearMargin,
  type SideMargin,
} from '../../engine/margin/index.ts';
import { gearName, visible, type Voice } from '../narrative/index.ts';
import { type Page, paragraph, section, type Cell, table } from '../text/index.ts';

/** The cautions, a row a gear for either way of the load, and where the figures come from. */
export function marginText(report: MarginReport, page: Page): string {
  const { train, load, gears, one } = report;
  const { voice } = page;
  const { engineNm, stallRatio } = load;
  const [pressure, engine] = [pressureText(report, voice), voice.decimal(engineNm)];
  const title = { train: voice.train(train), pressure, engine, ratio: voice.decimal(stallRatio) };
  const stalled = voice.decimal(times(engineNm, stallRatio));
  const sides = [
    ['drive', voice.say('margin.drive', { torque: stalled })],
    ['coast', voice.say('margin.coast', { torque: engine })],
  ] as const;
  const said = (text: string) => paragraph(text, page);
  return [
    ...said(voice.say('margin.title', title)).map(page.ink.strong),
    ...section(
      voice.say('plan.caution'),
      [
        ...paragraph(`! ${voice.say('margin.caution')}`, page, '  '),
        ...paragraph(`! ${voice.say('caution.stall')}`, page, '  '),
        ...paragraph(`! ${voice.say('margin.own data')}`, page, '  '),
      ],
      page,
    ),
    ...sides.flatMap(([end, head]) => section(head, sideTable(report, end, page), page)),
    ...(one ? [] : firstLines(gears, page)),
    ...(one ? sides.flatMap(([end, head]) => devicesOf(gears, end, head, page)) : []),
    ...section(
      voice.say('margin.sources'),
      marginSources(report, voice).flatMap((text) => paragraph(text, page, '  ')),
      page,
    ),
    '',
    ...said(voice.say('margin.legend')).map(page.ink.faint),
    ...(one ? [] : said(voice.say('margin.more')).map(page.ink.faint)),
  ].join('\n');
}

function firstLines(gears: readonly GearMargin[], page: Page): string[] {
  const text = firstToSlipText(gears, page.voice);
  return text === undefined ? [] : ['', ...paragraph(text, page)];
}

/** What has least to spare of all; undefined where nothing is known to slip. */
export function firstToSlipText(gears: readonly GearMargin[], voice: Voice): string | undefined {
  const first = firstToSlip(gears);
  if (!first) return undefined;
  const { devices, mostNm, askedNm, load } = first;
  return voice.say('margin.first', {
    gear: gearName(first, voice),
    load,
    devices: devices.map((name) => voice.called(name)).join(' + '),
    spare: spare(mostNm, askedNm, voice),
    holds: toNumber(mostNm) >= toNumber(askedNm) ? 'yes' : 'no',
  });
}

function sideTable(report: MarginReport, end: 'drive' | 'coast', page: Page): string[] {
  const { voice } = page;
  const { gears, pressureUnit: unit } = report;
  const rows = gears.flatMap((gear) => {
    return sidesOf(gear, end, voice).map(([name, side]) => [
      name,
      ...marginCells(side, unit, voice),
    ]);
  });
  const least = { said: voice.say('margin.least', { unit }) };
  return table(['gear', 'passes', 'spare', 'first', least], rows, page);
}

/** The sides of a gear under a heading, by name: a gear that drives nothing may coast either way. */
export function sidesOf(
  gear: GearMargin,
  end: 'drive' | 'coast',
  voice: Voice,
): (readonly [name: string, side: SideMargin])[] {
  const [name, { inReverse }] = [gearName(gear, voice), gear];
  const sides = [[name, gear[end]] as const];
  if (end === 'coast' && inReverse)
    sides.push([voice.say('margin.reverse', { gear: name }), inReverse]);
  return sides;
}

/** "130 psi", in the unit in which it was typed. */
export function pressureText({ load, pressureUnit: unit }: MarginReport, voice: Voice): string {
  const value = toldIn(load.pressureKpa, 'pressure', unit);
  return voice.say('margin.pressure', { value: voice.decimal(value), unit });
}

/** What a side passes, its margin, what slips first, and the least pressure that holds, in a unit. */
export function marginCells(side: SideMargin, unit: string, voice: Voice): Cell[] {
  const { state, askedNm, mostNm, letsGo, leastKpa } = side;
  if (state !== 'driving') return [voice.say('state', { state }), '', '', ''];
  return [
    mostNm ? down(mostNm) : voice.say('margin.no limit'),
    mostNm ? spare(mostNm, askedNm, voice) : '',
    letsGo.map((name) => voice.called(name)).join(' + '),
    leastKpa ? leastIn(leastKpa, unit, voice) : voice.say('margin.never'),
  ];
}

function devicesOf(
  gears: readonly GearMargin[],
  end: 'drive' | 'coast',
  head: string,
  page: Page,
): string[] {
  const { voice } = page;
  const sides = gears.flatMap((gear) => sidesOf(gear, end, voice));
  return sides.flatMap(([gear, { devices }]) => {
    const rows = devices.map((margin) => deviceCells(margin, voice));
    if (rows.length === 0) return [];
    const title = voice.say('margin.devices', { gear, side: head });
    return section(title, table(['device', 'must', 'can', 'spare'], rows, page), page);
  });
}

/** A device, what it must and what it can carry, and its margin. */
export function deviceCells({ device, mustNm, canNm }: DeviceMargin, voice: Voice): Cell[] {
  const most = greatest(mustNm);
  return [
    voice.called(device),
    isSpan(mustNm) ? voice.say('margin.shared', sharedEnds(mustNm, voice)) : up(size(mustNm)),
    canNm ? down(canNm) : voice.say('margin.unknown'),
    canNm && most && most.num !== 0 ? spare(canNm, most, voice) : '',
  ];
}

/** Devices whose figures are used, by where they come from; then those of which nobody has said. */
export function marginSources({ train, gears, typed }: MarginReport, voice: Voice): string[] {
  const used = new Set(
    gears.flatMap(({ drive, coast, inReverse }) => {
      return [drive, coast, inReverse].flatMap((side) => side?.devices ?? []).map((d) => d.device);
    }),
  );
  const known = train.capacities ?? [];
  const places = new Map<string, string[]>();
  const note = (place: string, name: string) => {
    places.set(place, [...(places.get(place) ?? []), name]);
  };
  for (const { device, source = '', by = '' } of known) {
    if (used.has(device)) note(sourceText(source, by, voice), voice.called(device));
  }
  if (train.engine && !typed) {
    const { source = '', by = '' } = train.engine;
    note(sourceText(source, by, voice), voice.say('margin.engine'));
  }
  for (const name of used) {
    if (!known.some(({ device }) => device === name))
      note(voice.say('margin.unknown'), voice.called(name));
  }
  return [...places].map(([place, names]) => {
    return voice.say('margin.source', { names: voice.list(names), place });
  });
}

function sourceText(source: string, by: string, voice: Voice): string {
  const values = {
    has: source === '' ? 'no' : 'yes',
    source: visible(source),
    signed: by === '' ? 'no' : 'yes',
    by: visible(by),
  };
  return voice.say('margin.place', values);
}

// Whole newton metres and kilopascals, to the safe side.
function down(value: Rational): Rational {
  return fraction(Math.floor(toNumber(value)));
}

function up(value: Rational): Rational {
  return fraction(Math.ceil(toNumber(value)));
}

// So many decimals as tell it to 10 kPa at least, to the safe side.
function leastIn(kpa: Rational, unit: string, voice: Voice): Cell {
  const kpaOfOne = 1 / toNumber(toldIn(fraction(1), 'pressure', unit));
  const decimals = Math.max(0, Math.ceil(Math.log10(kpaOfOne / 10)));
  const scale = 10 ** decimals;
  const whole = Math.ceil(toNumber(toldIn(kpa, 'pressure', unit)) * scale);
  return decimals === 0 ? fraction(whole) : voice.written((whole / scale).toFixed(decimals));
}

function size({ num, den }: Rational): Rational {
  return num < 0 ? { num: -num, den } : { num, den };
}

function greatest(quantity: Quantity): Rational | null {
  if (!isSpan(quantity)) return size(quantity);
  const ends = [quantity.from, quantity.to].map((end) => end && size(end));
  const [from, to] = ends;
  return from && to ? (toNumber(from) > toNumber(to) ? from : to) : null;
}

function sharedEnds(quantity: Quantity, voice: Voice) {
  const { from, to } = isSpan(quantity) ? quantity : { from: quantity, to: quantity };
  const sizes = [from, to].map((end) => (end ? toNumber(size(end)) : Infinity));
  const [least, most] = [Math.min(...sizes), Math.max(...sizes)];
  const opposed = from && to && from.num < 0 && to.num > 0;
  const told = (value: number) => voice.decimal(fraction(Math.ceil(value)));
  return { from: opposed ? '0' : told(least), to: told(most) };
}

// 1.21 where 532 can be passed and 440 is asked: two decimals, never more than it is.
function spare(can: Rational, must: Rational, voice: Voice): string {
  const hundredths = Math.floor((toNumber(can) / toNumber(must)) * 100 + 1e-9);
  return voice.written((hundredths / 100).toFixed(2));
}
