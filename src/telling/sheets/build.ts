import type { Plan, PlannedCheck, Step, Watched } from '../../engine/plan/index.ts';
import { isFriction, type Train } from '../../engine/train/index.ts';
import type { FoldedJob } from '../../shop/records/index.ts';
import {
  feltText,
  gripText,
  type Language,
  mistakeText,
  partTexts,
  seenFrom,
  type Stand,
  visible,
  type Voice,
  voiceOf,
} from '../narrative/index.ts';
import { cautionOf } from './cautions.ts';
import type { Block, Sheet } from './document.ts';
import { headOf, jobFields } from './filled.ts';
import { checksIn } from './job.ts';

/**
 * The build sheet: the steps of the plan with boxes to tick, what each hand check should feel and
 * room for what it did, and in bold the last step at which a mistake can still be put right.
 */
export function buildSheet(
  train: Train,
  plan: Plan,
  language: Language,
  stand: Stand,
  job?: FoldedJob,
): Sheet {
  const voice = voiceOf(language);
  const inspected = (mistake: Watched, by: string) =>
    'inspection' in mistake.caughtBy && mistake.caughtBy.inspection === by;
  const air = plan.mistakes.some((mistake) => inspected(mistake, 'air check'));
  const springs = train.devices.some((device) => isFriction(device));
  const coverage = {
    checks: plan.checks,
    caught: plan.mistakes.filter(({ caughtBy }) => 'step' in caughtBy).length,
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
      ...stepsOf({ train, plan, voice, stand, numbers: numbersOf(plan) }),
      ...checksIn(job, voice),
    ],
  };
}

interface Told {
  readonly train: Train;
  readonly plan: Plan;
  readonly voice: Voice;
  readonly stand: Stand;
  readonly numbers: ReadonlyMap<PlannedCheck, number>;
}

function numbersOf({ steps }: Plan): Map<PlannedCheck, number> {
  return new Map(steps.flatMap(({ checks }) => checks).map((check, i) => [check, i + 1]));
}

function stepsOf(told: Told): Block[] {
  return told.plan.steps.map((step) => ({ block: 'together', blocks: stepBlocks(step, told) }));
}

function stepBlocks({ number, part, checks }: Step, told: Told): Block[] {
  const { voice, plan } = told;
  const looks = partTexts(part, voice.language);
  const late = lastLook(number, plan);
  return [
    { block: 'heading', text: `${number}. ${visible(part.name)}` },
    { block: 'ticks', lines: looks.length > 0 ? looks : [voice.say('part.fitted')] },
    ...checks.flatMap((check) => checkBlocks(check, number, told)),
    ...(late.length === 0
      ? []
      : [
          {
            block: 'paragraph' as const,
            text: voice.say('plan.last', { parts: voice.names(late) }),
            look: 'strong' as const,
          },
        ]),
  ];
}

function checkBlocks(check: PlannedCheck, step: number, told: Told): Block[] {
  const { voice, stand, numbers } = told;
  const values = {
    number: numbers.get(check) ?? 0,
    holds: check.hold ? 'yes' : 'no',
    hold: check.hold ? gripText(check.hold, voice) : '',
    turn: gripText(check.turn, voice),
  };
  return [
    {
      block: 'table',
      columns: [
        { head: headOf('check', voice), width: { share: 5 } },
        { head: headOf('predicted', voice), width: { share: 3 } },
        { head: headOf('felt', voice), width: { share: 3 } },
      ],
      rows: [
        [
          voice.say('plan.check', values),
          { text: feltText(check.right, voice.language, stand), look: 'strong' },
          '',
        ],
      ],
      rowMm: 13,
    },
    ...check.wrong.map(({ felt, mistakes }): Block => {
      const names = mistakes.map((mistake) => mistakeName(mistake, step, told));
      const text = voice.say('plan.wrong', {
        felt: feltText(felt, voice.language, stand),
        mistakes: names.join('; '),
      });
      return { block: 'paragraph', text, look: 'quiet' };
    }),
  ];
}

function mistakeName(
  mistake: Watched['mistake'],
  step: number,
  { train, plan, voice }: Told,
): string {
  const name = mistakeText(mistake, train, voice.language);
  const watched = plan.mistakes.find((other) => other.mistake === mistake);
  return watched && watched.rightUntil < step
    ? voice.say('plan.late', { mistake: name, step: watched.rightUntil })
    : name;
}

// The parts of which the next one takes away the sight, but for the one that just went on.
function lastLook(step: number, { steps, mistakes }: Plan): string[] {
  if (step === steps.length) return [];
  const own = steps[step - 1]?.part.name;
  const until = mistakes.filter(({ rightUntil, part }) => rightUntil === step && part !== own);
  return [...new Set(until.map(({ part }) => part))];
}
