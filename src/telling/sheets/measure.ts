import type { Measurements } from '../../asking/build/index.ts';
import type { Device, MeasuredKind, Train } from '../../engine/train/index.ts';
import type { EndPlayJudgement } from '../../shop/endplay/index.ts';
import type { PackJudgement } from '../../shop/packs/index.ts';
import { type FoldedJob, standing } from '../../shop/records/index.ts';
import { keyOf, type Voice } from '../narrative/index.ts';
import { cautionOf } from './cautions.ts';
import {
  type Chosen,
  choiceTable,
  limitBlocks,
  readingsTable,
  remarkBlocks,
  shelfBlocks,
  wearTable,
} from './measured.ts';
import type { SheetBlock, Sheet } from './document.ts';
import { jobFields } from './filled.ts';
import { preloadBlock } from './preload.ts';
import { bandBlock, wornBlocks } from './worn.ts';

/**
 * The measure-and-select sheet: every pack, end play, band and worn part with its limit and the
 * limit's source, the readings or room for them, and the part that was chosen, before and after.
 */
export function measureSheet(
  train: Train,
  measured: Measurements,
  voice: Voice,
  job?: FoldedJob,
): Sheet {
  return {
    title: voice.say('sheet.title', { sheet: 'measure' }),
    blocks: [
      cautionOf(['springs', 'air', 'sharp'], voice),
      jobFields(voice, job),
      { block: 'paragraph', text: voice.say('sheet.measure.how') },
      { block: 'paragraph', text: voice.say('sheet.own data'), look: 'strong' },
      ...Object.values(SECTIONS).flatMap((section) => section(train, measured, { voice, job })),
    ],
  };
}

interface MeasureContext {
  readonly voice: Voice;
  readonly job: FoldedJob | undefined;
}

// Of each kind of thing that is measured, in the order of the sheet.
const SECTIONS: Readonly<
  Record<MeasuredKind, (train: Train, its: Measurements, context: MeasureContext) => SheetBlock[]>
> = {
  pack({ devices }, { pack }, context) {
    const packed = devices.filter(({ kind }) => kind === 'clutch' || kind === 'brake');
    return packed.flatMap((device) => packBlocks(device, pack.find(isOf(device)), context));
  },
  endplay: (_, { endplay }, context) => endplay.map((play) => playBlock(play, context)),
  preload: (_, { preload }, { voice, job }) =>
    preload.map((its) => {
      return preloadBlock(its, { voice, chosen: chosenFor(its.preload.bearings, job) });
    }),
  band: (_, { band }, { voice, job }) =>
    band.map((its) => bandBlock(its, { voice, chosen: chosenFor(its.band.device, job) })),
  wear: (_, { wear }, { voice }) => wornBlocks(wear, voice),
};

// The part that was taken last.
function chosenFor(name: string, job: FoldedJob | undefined): Chosen | undefined {
  const entry = job && standing(job, 'chosen').findLast(({ told }) => told.of === name);
  return entry && { part: entry.told.part, who: entry.who };
}

function isOf({ name }: Device) {
  return ({ pack }: PackJudgement) => pack.device === name;
}

const WAYS = ['feeler', 'lifted', 'on air', 'depth gauge'] as const;

function packBlocks(
  device: Device,
  judgement: PackJudgement | undefined,
  { voice, job }: MeasureContext,
): SheetBlock[] {
  const frictions = judgement?.frictions ?? 0;
  const name = voice.called(device.name);
  const readings = readingsTable(WAYS, judgement?.measured ?? [], judgement?.pack, voice);
  const blocks: SheetBlock[] = [
    {
      block: 'heading',
      text: judgement ? voice.say('pack.device', { device: name, frictions }) : name,
    },
    ...limitBlocks(judgement?.bounds, voice),
    ...(judgement?.pack.shelf ? shelfBlocks(judgement.pack.shelf, voice) : []),
    readings,
    ...remarkBlocks(judgement?.remarks ?? [], voice),
    choiceTable(
      {
        before: judgement?.judged?.clearance,
        after: judgement?.again?.measured.clearance,
        fitted: judgement?.pack.shelf?.fitted,
        selection: judgement?.selection,
        chosen: chosenFor(device.name, job),
      },
      voice,
    ),
  ];
  return [{ block: 'together', blocks }, ...(judgement ? [wearTable(judgement, voice)] : [])];
}

function playBlock(judgement: EndPlayJudgement, { voice, job }: MeasureContext): SheetBlock {
  const { endPlay, measured, bounds, selection, remarks } = judgement;
  const shaft = voice.called(endPlay.shaft);
  return {
    block: 'together',
    blocks: [
      {
        block: 'heading',
        text: voice.say('sheet.measure.play', {
          kind: keyOf(endPlay.measure ?? 'end play'),
          shaft,
        }),
      },
      ...limitBlocks(bounds, voice),
      ...(endPlay.shelf ? shelfBlocks(endPlay.shelf, voice) : []),
      readingsTable(
        ['lifted'],
        measured ? [{ ...measured, way: 'lifted' }] : [],
        undefined,
        voice,
        voice.say('sheet.measure.dial', { kind: keyOf(endPlay.measure ?? 'end play') }),
      ),
      ...remarkBlocks(remarks, voice),
      choiceTable(
        {
          before: measured?.clearance,
          after: judgement.again?.measured.clearance,
          fitted: endPlay.shelf?.fitted,
          selection,
          chosen: chosenFor(endPlay.shaft, job),
        },
        voice,
      ),
    ],
  };
}
