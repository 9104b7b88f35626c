import type { Chart, ChartGear, Shift } from '../../engine/chart/index.ts';
import { compare, opposite, type Rational, signOf } from '../../engine/linear/index.ts';
import { isFriction, type Train, type Way } from '../../engine/train/index.ts';
import {
  coastText,
  gearName,
  type MessageId,
  throughText,
  type Voice,
} from '../narrative/index.ts';
import { type Page, paragraph, section, type Cell, type Head, table } from '../text/index.ts';

/** The chart by what it is for; with `all`, every combination, a line each, in binary order. */
export function chartText(train: Train, chart: Chart, all: boolean, page: Page): string {
  const { voice } = page;
  const count = (state: ChartGear['drive']) => chart.gears.filter((g) => g.drive === state).length;
  const put = (head: MessageId, heads: readonly Head[], rows: readonly (readonly Cell[])[]) => {
    return section(voice.say(head), rows.length === 0 ? [] : table(heads, rows, page), page);
  };
  const own = train.finalDrive !== undefined;
  const row = (gear: ChartGear): Cell[] => [
    gear.on.length === 0
      ? voice.say('on.nothing')
      : gear.on.map((on) => voice.called(on)).join(' + '),
    gear.ratio ?? voice.say('state', { state: gear.drive }),
    ...(own ? [gear.beforeFinal ?? ''] : []),
    coastText(gear, voice),
  ];
  const named = (gear: ChartGear): Cell[] => [namesOf(gear, voice), ...row(gear)];
  const columns: readonly Head[] = ['on', 'ratio', ...(own ? (['own'] as const) : []), 'coast'];
  const unnamed = chart.gears.filter((gear) => gear.drive === 'driving' && gear.named.length === 0);
  const title = voice.say('chart.title', {
    train: voice.train(train),
    devices: train.devices.filter(isFriction).length,
    pawls: train.devices.filter(({ kind }) => kind === 'pawl').length,
    combinations: chart.gears.length,
    driving: count('driving'),
    neutral: count('neutral'),
    tied: count('tied up'),
  });
  const [first = '', ...others] = title.split('\n');
  return [
    ...paragraph(first, page).map(page.ink.strong),
    ...others.flatMap((line) => paragraph(line, page)),
    ...(all
      ? [
          ...put('chart.all', ['on', 'gear', ...columns.slice(1)], everyRow(chart, row, voice)),
          '',
          ...legend(chart, page),
        ]
      : [
          ...put('chart.named', ['gear', ...columns], inFileOrder(train, chart).map(named)),
          ...put('chart.unnamed', columns, unnamed.toSorted(byRatio(chart.forward)).map(row)),
          ...put(
            'chart.steps',
            SHIFT_HEADS,
            chart.shifts.map((shift) => shiftRow(shift, chart, page)),
          ),
          '',
          ...paragraph(voice.say('chart.more'), page).map(page.ink.faint),
        ]),
  ].join('\n');
}

function namesOf({ named }: ChartGear, voice: Voice): string {
  return named.map((gear) => gearName(gear, voice)).join(', ');
}

// A letter a device, a dot where it is off: a line a combination, whatever the names.
function everyRow(chart: Chart, row: (gear: ChartGear) => Cell[], voice: Voice): Cell[][] {
  return chart.gears.map((gear) => {
    const letters = chart.devices.map((name, i) => (gear.on.includes(name) ? letter(i) : '.'));
    return [letters.join(''), namesOf(gear, voice), ...row(gear).slice(1)];
  });
}

function legend({ devices }: Chart, page: Page): string[] {
  return devices.flatMap((name, i) =>
    paragraph(`${letter(i)}  ${page.voice.called(name)}`, page, '   '),
  );
}

function letter(device: number): string {
  return String.fromCodePoint(65 + device);
}

const SHIFT_HEADS = ['step', 'release', 'apply', 'both', 'neither'] as const;

function shiftRow(shift: Shift, chart: Chart, page: Page): Cell[] {
  const { voice } = page;
  const name = (index: number) => {
    const [first] = chart.gears[index]?.named ?? [];
    return first ? gearName(first, voice) : '';
  };
  const through = (place: number | undefined) => {
    const gear = place === undefined ? undefined : chart.gears[place];
    return gear ? throughText(gear, voice) : '';
  };
  return [
    `${name(shift.from)} > ${name(shift.to)}`,
    voice.called(shift.release ?? ''),
    voice.called(shift.apply ?? ''),
    through(shift.both),
    through(shift.neither),
  ];
}

function inFileOrder(train: Train, chart: Chart): ChartGear[] {
  const order = train.ranges.flatMap(({ name: range, gears }) => {
    return gears.map(({ name: gear }) => `${range} ${gear}`);
  });
  const place = ({ named: [first] }: ChartGear) =>
    first ? order.indexOf(`${first.range} ${first.gear}`) : -1;
  return chart.gears
    .filter((gear) => gear.named.length > 0)
    .toSorted((a, b) => place(a) - place(b));
}

// The greatest reduction first, reverses last.
function byRatio(forward: Way): (a: ChartGear, b: ChartGear) => number {
  const sign = forward === 'clockwise' ? 1 : -1;
  const reverse = (ratio: Rational) => (signOf(ratio) === sign ? 0 : 1);
  const size = (ratio: Rational) => (sign > 0 ? ratio : opposite(ratio));
  return ({ ratio: a }, { ratio: b }) => {
    if (!a || !b) return 0;
    return reverse(a) - reverse(b) || compare(size(b), size(a));
  };
}
