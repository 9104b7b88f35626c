import type { Plan, PlannedCheck, Step, Watched } from '../../engine/plan/index.ts';
import { isFriction, type Train } from '../../engine/train/index.ts';
import {
  AT_THE_INPUT,
  feltText,
  gripText,
  mistakeText,
  partTexts,
  seenFrom,
  visible,
  voiceOf,
} from '../narrative/index.ts';
import { type Page, paragraph, section } from './page.ts';
import { table } from './table.ts';

/** The build as a sheet for the bench: cautions, steps with boxes to tick, and every mistake. */
export function planText(train: Train, plan: Plan, page: Page): string {
  const voice = voiceOf(page.language);
  const lines = (text: string, hang?: string) => paragraph(text, page, hang);
  const byHand = plan.mistakes.filter(({ caughtBy }) => 'step' in caughtBy);
  const others = plan.mistakes.filter(({ caughtBy }) => 'inspection' in caughtBy);
  const coverage = {
    checks: plan.checks,
    caught: byHand.length,
    mistakes: plan.mistakes.length,
    proven: plan.proven ? 'yes' : 'no',
  };
  const title = { train: visible(train.name), steps: plan.steps.length };
  const numbered = new Map<PlannedCheck, number>();
  for (const check of plan.steps.flatMap(({ checks }) => checks)) {
    numbered.set(check, numbered.size + 1);
  }
  const told = { train, plan, page, numbered };
  return [
    ...lines(voice.say('plan.title', title)).map(page.ink.strong),
    ...section(voice.say('plan.caution'), cautions(train, plan, page), page),
    '',
    ...lines(voice.say('plan.coverage', coverage)),
    ...lines(voice.say('plan.how', { seen: seenFrom(page.stand ?? AT_THE_INPUT, voice) })),
    ...plan.steps.flatMap((step) => ['', ...stepLines(step, told)]),
    ...section(voice.say('plan.felt'), mistakeTable(byHand, 'felt', told), page),
    ...section(voice.say('plan.instead'), mistakeTable(others, 'instead', told), page),
    '',
    ...lines(voice.say('plan.legend')).map(page.ink.faint),
  ].join('\n');
}

interface Told {
  readonly train: Train;
  readonly plan: Plan;
  readonly page: Page;
  readonly numbered: ReadonlyMap<PlannedCheck, number>;
}

// Only what fits the work: there are trains without springs.
function cautions(train: Train, { mistakes }: Plan, page: Page): string[] {
  const voice = voiceOf(page.language);
  const air = mistakes.some(({ caughtBy }) => {
    return 'inspection' in caughtBy && caughtBy.inspection === 'air check';
  });
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

function stepLines({ number, part, checks }: Step, told: Told): string[] {
  const { page, plan } = told;
  const voice = voiceOf(page.language);
  const head = `${number}. ${visible(part.name)}`;
  const looks = partTexts(part, page.language);
  const boxes = looks.length > 0 ? looks : [voice.say('part.fitted')];
  return [
    ...paragraph(head, page).map(page.ink.strong),
    ...boxes.flatMap((look) => ticked(look, page)),
    ...checks.flatMap((check) => checkLines(check, number, told)),
    ...lastLook(number, plan).flatMap((parts) => {
      const text = voice.say('plan.last', { parts: voice.names(parts) });
      return indented(text, '   ', page).map(page.ink.strong);
    }),
  ];
}

function checkLines(check: PlannedCheck, step: number, told: Told): string[] {
  const { train, plan, page, numbered } = told;
  const voice = voiceOf(page.language);
  const felt = (of: PlannedCheck['right']) => feltText(of, page.language, page.stand);
  const values = {
    number: numbered.get(check) ?? 0,
    holds: check.hold ? 'yes' : 'no',
    hold: check.hold ? gripText(check.hold, voice) : '',
    turn: gripText(check.turn, voice),
  };
  const right = voice.say('plan.right', { felt: felt(check.right) });
  const wrong = check.wrong.map(({ felt: its, mistakes }) => {
    const names = mistakes.map((mistake) => {
      const name = mistakeText(mistake, train, page.language);
      const watched = plan.mistakes.find((other) => other.mistake === mistake);
      const late = watched !== undefined && watched.rightUntil < step;
      return late ? voice.say('plan.late', { mistake: name, step: watched.rightUntil }) : name;
    });
    return voice.say('plan.wrong', { felt: felt(its), mistakes: names.join('; ') });
  });
  return [
    ...indented(voice.say('plan.check', values), '   ', page),
    ...ticked(right, page),
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

// The parts of which the next one takes away the sight, but for the one that just went on.
function lastLook(step: number, { steps, mistakes }: Plan): string[][] {
  const own = steps[step - 1]?.part.name;
  const parts = mistakes
    .filter(({ rightUntil, part }) => rightUntil === step && part !== own)
    .map(({ part }) => part);
  return parts.length === 0 || step === steps.length ? [] : [[...new Set(parts)]];
}

function mistakeTable(
  mistakes: readonly Watched[],
  by: 'felt' | 'instead',
  { train, plan, page }: Told,
): string[] {
  const voice = voiceOf(page.language);
  const rows = mistakes.map(({ mistake, made, rightUntil, caughtBy }) => {
    const caught =
      'step' in caughtBy
        ? `${caughtBy.step}`
        : voice.say('inspection', { inspection: caughtBy.inspection.replace(' ', '_') });
    const until = rightUntil === plan.steps.length ? voice.say('plan.end') : `${rightUntil}`;
    return [mistakeText(mistake, train, page.language), `${made}`, caught, until];
  });
  return rows.length === 0 ? [] : table(['mistake', 'made', by, 'until'], rows, page);
}
