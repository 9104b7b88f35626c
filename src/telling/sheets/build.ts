import type { Plan, Step } from '../../engine/plan/index.ts';
import { isFriction, type Train } from '../../engine/train/index.ts';
import { FIRST_START } from '../../shop/firststart/index.ts';
import type { FoldedJob } from '../../shop/records/index.ts';
import type { Stand } from '../../asking/request/index.ts';
import {
  type CheckTold,
  lastLook,
  seenFrom,
  startTold,
  type StepContext,
  stepTold,
  type Voice,
} from '../narrative/index.ts';
import { cautionOf } from './cautions.ts';
import type { SheetBlock, SheetLook, Sheet } from './document.ts';
import { headOf, jobFields } from './filled.ts';
import { checksIn } from './job.ts';

/**
 * The build sheet: the steps of the plan with boxes to tick, what each hand check should feel and
 * room for what it did, and in bold the last step at which a mistake can still be put right.
 */
export function buildSheet(
  train: Train,
  plan: Plan,
  voice: Voice,
  stand: Stand,
  job?: FoldedJob,
): Sheet {
  const air = plan.steps.some(({ does }) => does === 'air check');
  const [first] = plan.steps;
  const springs = train.devices.some((device) => isFriction(device));
  const coverage = {
    checks: plan.checks,
    caught: plan.mistakes.filter(({ caught }) => caught.by === 'hand check').length,
    mistakes: plan.mistakes.length,
    proven: plan.proven ? 'yes' : 'no',
  };
  return {
    title: voice.say('sheet.title', { sheet: 'build' }),
    blocks: [
      cautionOf(
        [
          'hands',
          ...(springs ? ['springs' as const] : []),
          ...(air ? ['air' as const] : []),
          'weight',
        ],
        voice,
      ),
      jobFields(voice, job),
      { block: 'paragraph', text: voice.say('plan.how', { seen: seenFrom(stand, voice) }) },
      { block: 'paragraph', text: voice.say('plan.coverage', coverage), look: 'quiet' },
      ...(plan.assumed > 0
        ? [paragraph(voice.say('plan.assumed', { count: plan.assumed }), 'quiet')]
        : []),
      ...(first?.up ? [paragraph(voice.say('plan.first up', { end: first.up }), 'strong')] : []),
      ...plan.steps.map((step): SheetBlock => {
        return { block: 'together', blocks: stepBlocks(step, { train, plan, voice, stand }) };
      }),
      ...startBlocks(voice),
      ...checksIn(job, voice),
    ],
  };
}

function stepBlocks(step: Step, context: StepContext): SheetBlock[] {
  const { voice } = context;
  const its = stepTold(step, context);
  const last = lastLook(step, context);
  return [
    { block: 'heading', text: `${step.number}. ${its.title}` },
    ...(its.caution === undefined ? [] : [paragraph(its.caution, 'warning')]),
    ...its.how.map((line) => paragraph(line)),
    ...(its.reads ? [readingsBlock(voice)] : []),
    ...(its.heard.length > 0 ? [heardBlock(its.heard)] : []),
    ...(its.ticks.length > 0 ? [{ block: 'ticks' as const, lines: its.ticks }] : []),
    ...its.checks.flatMap((check) => checkBlocks(check, voice)),
    ...its.catches.map((line) => paragraph(line, 'quiet')),
    ...(last === undefined ? [] : [paragraph(last, 'stop')]),
  ];
}

function paragraph(text: string, look?: SheetLook): SheetBlock {
  return { block: 'paragraph', text, ...(look && { look }) };
}

// What is asked of the hands, what is predicted, and room for what was felt.
function checkBlocks({ ask, right, wrong }: CheckTold, voice: Voice): SheetBlock[] {
  const table: SheetBlock = {
    block: 'table',
    columns: [
      { head: headOf('check', voice), width: { share: 5 } },
      { head: headOf('predicted', voice), width: { share: 3 } },
      { head: headOf('felt', voice), width: { share: 3 } },
    ],
    rows: [[ask, { text: right, look: 'strong' }, '']],
    rowMm: 13,
  };
  return [table, ...wrong.map((line) => paragraph(line, 'quiet'))];
}

// What is done when it runs for the first time, and room for what was read there.
function startBlocks(voice: Voice): SheetBlock[] {
  return [
    { block: 'heading', text: voice.say('start.heading') },
    paragraph(voice.say('start.practice'), 'strong'),
    ...FIRST_START.map((step, i): SheetBlock => {
      const { title, caution, text } = startTold(step, voice);
      const blocks: SheetBlock[] = [
        { block: 'heading', text: voice.say('start.numbered', { number: i + 1, title }) },
        ...(caution === undefined ? [] : [paragraph(caution, 'warning')]),
        { block: 'ticks', lines: [text] },
        ...(step.reads ? [{ block: 'lines' as const, count: 2 }] : []),
      ];
      return { block: 'together', blocks };
    }),
  ];
}

const PLACES = 4;

function readingsBlock(voice: Voice): SheetBlock {
  const heads = [...Array.from({ length: PLACES }, (_, i) => `${i + 1}`), headOf('mean', voice)];
  return {
    block: 'table',
    columns: heads.map((head) => ({ head, width: { share: 1 }, align: 'middle' })),
    rows: [heads.map(() => '')],
    rowMm: 10,
  };
}

function heardBlock(heard: readonly string[]): SheetBlock {
  return {
    block: 'table',
    columns: heard.map((head) => ({ head, width: { share: 1 }, align: 'middle' })),
    rows: [heard.map(() => ({ ticks: [''] }))],
  };
}
