import type { Measurements } from '../../asking/build/index.ts';
import type { Device, Train } from '../../engine/train/index.ts';
import type { EndPlayJudgement } from '../../shop/endplay/index.ts';
import type { PackJudgement } from '../../shop/packs/index.ts';
import { type FoldedJob, standing } from '../../shop/records/index.ts';
import { keyOf, type Language, visible, type Voice, voiceOf } from '../narrative/index.ts';
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
  language: Language,
  job?: FoldedJob,
): Sheet {
  const voice = voiceOf(language);
  const packed = train.devices.filter(({ kind }) => kind === 'clutch' || kind === 'brake');
  return {
    title: voice.say('sheet.title', { sheet: 'measure' }),
    blocks: [
      cautionOf(['springs', 'air', 'sharp'], voice),
      jobFields(voice, job),
      { block: 'paragraph', text: voice.say('sheet.measure.how') },
      { block: 'paragraph', text: voice.say('sheet.own data'), look: 'strong' },
      ...packed.flatMap((device) => {
        return packBlocks(device, measured.packs.find(isOf(device)), { voice, job });
      }),
      ...measured.plays.map((play) => playBlock(play, { voice, job })),
      ...measured.preloads.map((preload) => {
        const chosen = chosenFor(preload.preload.bearings, job);
        return preloadBlock(preload, { voice, chosen });
      }),
      ...measured.bands.map((band) =>
        bandBlock(band, { voice, chosen: chosenFor(band.band.device, job) }),
      ),
      ...wornBlocks(measured.wear, voice),
    ],
  };
}

interface MeasureContext {
  readonly voice: Voice;
  readonly job: FoldedJob | undefined;
}

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
  const name = visible(device.name);
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
  const shaft = visible(endPlay.shaft);
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
