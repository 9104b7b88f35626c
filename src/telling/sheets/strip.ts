import { type End, isFriction, type Part, type Train, upOf } from '../../engine/train/index.ts';
import type { FoldedJob } from '../../shop/records/index.ts';
import { isReadWhole } from '../../shop/strip/index.ts';
import { partTexts, type Voice } from '../narrative/index.ts';
import { explodedScenes } from '../exploded/index.ts';
import { toSvg } from '../scene/index.ts';
import { cautionOf } from './cautions.ts';
import type { SheetBlock, SheetCell, SheetColumn, Sheet } from './document.ts';
import { headOf, jobFields, linesFor } from './filled.ts';

/**
 * The strip sheet: what is done before a unit comes apart, then its parts in the order in which
 * they come off: in a row on their axis, and as a list with the same numbers. A train without a
 * teardown gets empty rows.
 */
export function stripSheet(train: Train, voice: Voice, job?: FoldedJob): Sheet {
  const parts = train.teardown ?? [];
  const up = upOf(parts);
  const springs = train.devices.some((device) => isFriction(device));
  const dangers = ['weight', 'fluid', ...(springs ? ['springs' as const] : []), 'sharp'] as const;
  return {
    title: voice.say('sheet.title', { sheet: 'strip' }),
    blocks: [
      cautionOf(dangers, voice),
      jobFields(voice, job),
      ...before(train, voice),
      ...exploded(train, voice),
      { block: 'heading', text: voice.say('sheet.strip.order') },
      {
        block: 'paragraph',
        text: voice.say(parts.length === 0 ? 'sheet.strip.blank' : 'sheet.strip.how'),
      },
      {
        block: 'table',
        columns: columnsOf(voice),
        rows:
          parts.length === 0
            ? Array.from({ length: EMPTY_ROWS }, (_, i) => [`${i + 1}`, '', '', '', TICK])
            : parts.flatMap((part, i) => [
                ...turnRows(up(part), up(parts[i - 1] ?? part), voice),
                partRow(part, i + 1, up(part), playsUnder(train, part), voice),
              ]),
        rowMm: 12,
      },
    ],
  };
}

const EMPTY_ROWS = 24;
const TICK: SheetCell = { ticks: [''] };

function before(train: Train, voice: Voice): SheetBlock[] {
  const first = ['wash', 'fixture', 'plates', 'play', 'feel'];
  const { endPlays = [], preloads = [], teardown = [] } = train;
  const along = endPlays.filter(({ measure }) => measure !== 'backlash');
  const whole = along.filter(({ shaft }) => isReadWhole(teardown, shaft));
  const shafts = whole.map(({ shaft }) => {
    return { label: voice.say('sheet.strip.play', { shaft: voice.called(shaft) }) };
  });
  const bearings = preloads.map((preload) => {
    return {
      label: voice.say('sheet.strip.preload', { bearings: voice.called(preload.bearings) }),
    };
  });
  return [
    { block: 'heading', text: voice.say('sheet.strip.before') },
    { block: 'ticks', lines: first.map((what) => voice.say('sheet.strip.first', { what })) },
    ...linesFor([...shafts, ...bearings]),
    { block: 'fields', fields: [{ label: voice.say('sheet.strip.felt') }] },
  ];
}

// Of the width that its lettering was made for; a page has room for so much of it.
const WIDTH = 860;
const MOST = 1030;

function exploded(train: Train, voice: Voice): SheetBlock[] {
  const scenes = explodedScenes(train, { voice, width: WIDTH, most: MOST });
  const figures = scenes.map(({ title, ...scene }): SheetBlock => {
    const aspect = scene.height / scene.width;
    return { block: 'figure', svg: toSvg({ title, ...scene }), aspect, alt: title, caption: '' };
  });
  const key: SheetBlock = {
    block: 'paragraph',
    text: voice.say('drawn.exploded key'),
    look: 'quiet',
  };
  const [first, ...others] = figures;
  if (!first) return [];
  const heading: SheetBlock = { block: 'heading', text: voice.say('sheet.strip.row') };
  return [{ block: 'together', blocks: [heading, first] }, ...others, key];
}

function columnsOf(voice: Voice): SheetColumn[] {
  return [
    { head: headOf('number', voice), width: { mm: 11 }, align: 'middle' },
    { head: voice.say('head', { head: 'part' }), width: { share: 3 } },
    { head: headOf('look', voice), width: { share: 7 } },
    { head: headOf('found', voice), width: { share: 3 } },
    { head: headOf('off', voice), width: { mm: 13 }, align: 'middle' },
  ];
}

// Where another end is up than when the part before it came off.
function turnRows(now: End | undefined, last: End | undefined, voice: Voice): SheetCell[][] {
  if (now === undefined || last === undefined || now === last) return [];
  const turn = { text: voice.say('plan.turn over', { end: now }), look: 'strong' } as const;
  return [['', turn, voice.say('plan.danger', { danger: 'weight' }), '', TICK]];
}

// The shafts whose end play is read when this part is uncovered, and not before.
function playsUnder({ endPlays = [], teardown = [] }: Train, part: Part): readonly string[] {
  const along = endPlays.filter(({ measure }) => measure !== 'backlash');
  const closed = along.filter(({ shaft }) => part.closes?.includes(shaft));
  return closed.map(({ shaft }) => shaft).filter((shaft) => !isReadWhole(teardown, shaft));
}

function partRow(
  part: Part,
  number: number,
  up: End | undefined,
  plays: readonly string[],
  voice: Voice,
): SheetCell[] {
  const once = part.bolts?.once ? [voice.say('plan.bolts once')] : [];
  const reads = plays.map((shaft) => {
    return voice.say('sheet.strip.play', { shaft: voice.called(shaft) });
  });
  const looks = [...reads, ...partTexts(part, voice, up), ...once];
  return [
    `${number}`,
    { text: voice.called(part.name), look: 'strong' },
    { ticks: looks },
    '',
    TICK,
  ];
}
