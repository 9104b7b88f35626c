import { type DeviceWork, flow, type Flow } from '../../engine/flow/index.ts';
import { type Device, gearsOf, type Train } from '../../engine/train/index.ts';
import { brakingText, doingOf, gearName, MARKS, type Voice } from '../narrative/index.ts';
import type { SheetBlock, SheetCell, SheetColumn, Sheet } from './document.ts';

/**
 * The application chart: a row a gear, a column a device, under power and on coast, in the
 * marks of every chart.
 */
export function chartSheet(train: Train, voice: Voice): Sheet {
  const gears = gearsOf(train).map(({ range, gear, on }) => {
    const parked = train.devices.some(({ name, kind }) => kind === 'pawl' && on.includes(name));
    return { name: gearName({ range, gear }, voice), flow: flow(train, on), parked };
  });
  const parts = gears.length === 0 ? [] : partsOf(train.devices);
  return {
    title: voice.say('sheet.title', { sheet: 'chart' }),
    wide: train.devices.length > DEVICES_UPRIGHT,
    blocks: [
      {
        block: 'paragraph',
        text: voice.say(gears.length === 0 ? 'gears.none' : 'marks.chart'),
      },
      { block: 'paragraph', text: voice.say('sheet.chart.legend'), look: 'quiet' },
      ...SIDES.flatMap((side) => parts.flatMap((devices) => part(gears, devices, side, voice))),
    ],
  };
}

interface Row {
  readonly name: string;
  readonly flow: Flow;
  /** A pawl holds it. */
  readonly parked: boolean;
}

type Side = 'drive' | 'coast';
const SIDES = ['drive', 'coast'] as const;

// So many devices go on a page that stands, and on one that lies; more go on the next part.
const DEVICES_UPRIGHT = 8;
const DEVICES_WIDE = 16;

function partsOf(devices: readonly Device[]): (readonly Device[])[] {
  const parts = Math.max(1, Math.ceil(devices.length / DEVICES_WIDE));
  const each = Math.max(1, Math.ceil(devices.length / parts));
  return Array.from({ length: parts }, (_, i) => devices.slice(i * each, (i + 1) * each));
}

function part(
  rows: readonly Row[],
  devices: readonly Device[],
  side: Side,
  voice: Voice,
): SheetBlock[] {
  const columns: SheetColumn[] = [
    { head: voice.say('head', { head: 'gear' }), width: { share: 2 } },
    ...devices.map(({ name }): SheetColumn => {
      return { head: voice.called(name), width: { mm: 11.5 }, align: 'middle', upright: true };
    }),
    { head: voice.say('head', { head: 'ratio' }), width: { share: 3 }, align: 'middle' },
    ...(side === 'coast'
      ? [
          {
            head: voice.say('head', { head: 'braking' }),
            width: { mm: 23 },
            align: 'middle' as const,
          },
        ]
      : []),
  ];
  return [
    { block: 'heading', text: voice.say(side === 'drive' ? 'flow.power' : 'flow.coast') },
    {
      block: 'table',
      columns,
      rows: rows.map((row) => [
        { text: row.name, look: 'strong' },
        ...devices.map((device) => doingCell(row.flow[side].devices.get(device.name))),
        ratioCell(row, side, voice),
        ...(side === 'coast' ? [brakingText(row.flow, voice)] : []),
      ]),
    },
  ];
}

function doingCell(work: DeviceWork | undefined): SheetCell {
  const doing = work ? doingOf(work) : 'off';
  const carries = doing === 'on' || doing === 'holding';
  return { text: MARKS[doing], look: 'strong', ...(carries && { shaded: true }) };
}

// The ratio of the gear itself stands below the whole one, where the file tells them apart.
function ratioCell({ flow: its, parked }: Row, side: Side, voice: Voice): SheetCell {
  const { ratio, state } = its[side];
  const own = side === 'drive' ? its.beforeFinal : undefined;
  if (ratio && own) {
    const ratios = { whole: voice.number(ratio), own: voice.number(own) };
    return voice.say('sheet.chart.ratios', ratios);
  }
  if (ratio) return voice.number(ratio);
  if (parked) return voice.say('sheet.chart.parked');
  return voice.say(side === 'drive' ? 'state' : 'coast', { state });
}
