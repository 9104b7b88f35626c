import type { Plan, Step, Watched } from '../../engine/plan/index.ts';
import { isFriction, type Train } from '../../engine/train/index.ts';
import { FIRST_START } from '../../shop/firststart/index.ts';
import { AT_THE_INPUT } from '../../asking/request/index.ts';
import {
  type CheckTold,
  keyOf,
  lastLook,
  mistakeText,
  seenFrom,
  startTold,
  type StepContext,
  stepTold,
} from '../narrative/index.ts';
import { type Page, paragraph, section, table } from '../text/index.ts';

/** The build as a sheet for the bench: cautions, steps with boxes to tick, and every mistake. */
export function planText(train: Train, plan: Plan, page: Page): string {
  const { voice } = page;
  const lines = (text: string, hang?: string) => paragraph(text, page, hang);
  const byHand = plan.mistakes.filter(({ caught }) => caught.by === 'hand check');
  const others = plan.mistakes.filter(({ caught }) => caught.by !== 'hand check');
  const [first] = plan.steps;
  const coverage = {
    checks: plan.checks,
    caught: byHand.length,
    mistakes: plan.mistakes.length,
    proven: plan.proven ? 'yes' : 'no',
  };
  const title = { train: voice.train(train), steps: plan.steps.length };
  const told = { train, plan, page, voice, ...(page.stand && { stand: page.stand }) };
  return [
    ...lines(voice.say('plan.title', title)).map(page.ink.strong),
    ...section(voice.say('plan.caution'), cautions(train, plan, page), page),
    '',
    ...lines(voice.say('plan.coverage', coverage)),
    ...(plan.assumed > 0 ? lines(voice.say('plan.assumed', { count: plan.assumed })) : []),
    ...lines(voice.say('plan.how', { seen: seenFrom(page.stand ?? AT_THE_INPUT, voice) })),
    ...(first?.up ? lines(voice.say('plan.first up', { end: first.up })) : []),
    ...plan.steps.flatMap((step) => ['', ...stepLines(step, told)]),
    ...section(voice.say('start.heading'), startLines(page), page),
    ...section(voice.say('plan.felt'), mistakeTable(byHand, 'felt', told), page),
    ...section(voice.say('plan.instead'), mistakeTable(others, 'instead', told), page),
    '',
    ...lines(voice.say('plan.legend')).map(page.ink.faint),
  ].join('\n');
}

interface PlanContext extends StepContext {
  readonly page: Page;
}

// Only what fits the work: there are trains without springs.
function cautions(train: Train, { steps }: Plan, page: Page): string[] {
  const { voice } = page;
  const air = steps.some(({ does }) => does === 'air check');
  const springs = train.devices.some((device) => isFriction(device));
  const fitting = [
    'hands' as const,
    ...(springs ? (['springs'] as const) : []),
    ...(air ? (['air'] as const) : []),
    'weight' as const,
    'maker' as const,
  ];
  return fitting.flatMap((what) => {
    return paragraph(`! ${voice.say('plan.caution.of', { what })}`, page, '  ');
  });
}

function stepLines(step: Step, told: PlanContext): string[] {
  const { page } = told;
  const its = stepTold(step, told);
  const plain = (text: string, hang = '') => indented(text, '   ', page, hang);
  const last = lastLook(step, told);
  return [
    ...paragraph(`${step.number}. ${its.title}`, page).map(page.ink.strong),
    ...(its.caution === undefined ? [] : plain(`! ${its.caution}`, '  ')),
    ...its.how.flatMap((line) => plain(line)),
    ...(its.reads
      ? plain(told.voice.say('plan.read', { places: ROOM.repeat(4).trim(), mean: '____' }))
      : []),
    ...(its.heard.length > 0 ? plain(its.heard.map((sound) => `[ ] ${sound}`).join('   ')) : []),
    ...its.ticks.flatMap((tick) => ticked(tick, page)),
    ...its.checks.flatMap((check) => checkLines(check, told)),
    ...its.catches.flatMap((line) => plain(line, '  ')),
    ...(last === undefined ? [] : plain(last, '  ').map(page.ink.strong)),
  ];
}

// What is done when it runs for the first time; each step by the name that `job add` takes.
function startLines(page: Page): string[] {
  const { voice } = page;
  const steps = FIRST_START.flatMap((step, i) => {
    const { title, caution, text } = startTold(step, voice);
    const named = voice.say('start.numbered', { number: i + 1, title });
    return [
      '',
      ...paragraph(named, page).map(page.ink.strong),
      ...(caution === undefined ? [] : indented(`! ${caution}`, '   ', page, '  ')),
      ...ticked(text, page),
    ];
  });
  return [...paragraph(voice.say('start.practice'), page), ...steps];
}

const ROOM = '____  ';

function checkLines({ ask, right, wrong }: CheckTold, { page, voice }: PlanContext): string[] {
  return [
    ...indented(ask, '   ', page),
    ...ticked(voice.say('plan.right', { felt: right }), page),
    ...wrong.flatMap((text) => indented(text, '       ', page, '  ')),
  ];
}

function ticked(text: string, page: Page): string[] {
  return indented(`[ ] ${text}`, '   ', page, '    ');
}

function indented(text: string, indent: string, page: Page, hang = ''): string[] {
  const narrower = { ...page, columns: page.columns - indent.length };
  return paragraph(text, narrower, hang).map((line) => indent + line);
}

function mistakeTable(
  mistakes: readonly Watched[],
  by: 'felt' | 'instead',
  { train, plan, page, voice }: PlanContext,
): string[] {
  const rows = mistakes.map(({ mistake, made, caught, until, open }) => {
    const inspection = voice.say('inspection', { inspection: keyOf(caught.by) });
    const at =
      by === 'felt'
        ? `${caught.step}`
        : voice.say('plan.at', { by: inspection, step: caught.step });
    const end = until === plan.steps.length ? voice.say('plan.end') : `${until}`;
    const late = open < caught.step ? 'yes' : 'no';
    const last = voice.say('plan.until', { late, until: end, open });
    return [mistakeText(mistake, train, page.voice), `${made}`, at, last];
  });
  return rows.length === 0 ? [] : table(['mistake', 'made', by, 'until'], rows, page);
}
