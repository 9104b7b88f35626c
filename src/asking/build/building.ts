import { type HandAnswer, hand } from '../../engine/hand/index.ts';
import { lastSeen, type Plan, type PlannedCheck, type Step } from '../../engine/plan/index.ts';
import { halfBuilt, type Train, type Way } from '../../engine/train/index.ts';
import { FIRST_START, type StartStep } from '../../shop/firststart/index.ts';
import type { FoldedEntry, FoldedJob, Told } from '../../shop/records/index.ts';

/**
 * One thing to be done and answered for: a step, what was heard at it, a check by hand, a stop
 * before something is covered; and when the unit is built, a step of the first start.
 */
export type BuildTask = {
  /** As an entry of the job names it: "9", "9 sound", "9.1", "9 stop", "start 3". */
  readonly key: string;
} & (
  | { readonly what: 'do' | 'sound' | 'stop'; readonly step: Step }
  | { readonly what: 'check'; readonly step: Step; readonly check: PlannedCheck }
  | { readonly what: 'start'; readonly start: StartStep }
);

/** Every task of a build in its order, and of the first start after it. */
export function buildTasks(plan: Plan): readonly BuildTask[] {
  const tasks = plan.steps.flatMap((step): BuildTask[] => {
    const { number } = step;
    const sounds = step.does === 'air check';
    const stops = lastSeen(plan, step).length > 0;
    return [
      { key: `${number}`, what: 'do', step },
      ...(sounds ? [{ key: `${number} sound`, what: 'sound', step } as const] : []),
      ...checksOf(step).map((check, i): BuildTask => {
        return { key: `${number}.${i + 1}`, what: 'check', step, check };
      }),
      ...(stops ? [{ key: `${number} stop`, what: 'stop', step } as const] : []),
    ];
  });
  const starts = FIRST_START.map((start, i): BuildTask => {
    return { key: `start ${i + 1}`, what: 'start', start };
  });
  return [...tasks, ...starts];
}

/** How a task ended, and the entry that says so. */
export interface Answered {
  readonly outcome: Outcome;
  readonly said: string;
  readonly entry: FoldedEntry;
}

export type Outcome = 'done' | 'right' | 'wrong';

/**
 * Where a build stands by the notes of a job, by the keys of its tasks: the last word on each
 * counts. What was taken off again, back to a step, is open from there.
 */
export function builtIn(plan: Plan, job: FoldedJob | undefined): ReadonlyMap<string, Answered> {
  const tasks = new Map(buildTasks(plan).map((task) => [task.key, task]));
  const answered = new Map<string, Answered>();
  for (const entry of job?.entries ?? []) {
    if (entry.struckBy || entry.told?.kind !== 'note') continue;
    const [, words = '', outcome, said = ''] = NOTE.exec(entry.told.note) ?? [];
    const key = keyIn(words);
    const back = /^back (\d+)$/u.exec(key);
    if (back) {
      for (const [its, task] of tasks) {
        if (task.what === 'start' || task.step.number >= Number(back[1])) answered.delete(its);
      }
    }
    const task = tasks.get(key);
    if (!task || !said.includes(subjectOf(task))) continue;
    answered.set(key, { outcome: OUTCOMES.get(outcome ?? '') ?? 'done', said, entry });
  }
  return answered;
}

/** The note that says how a task ended. */
export function builtTold(
  key: string,
  outcome: Outcome,
  said: string,
  language: 'en' | 'es',
): Told {
  const { build, right, wrong } = WORDS[language];
  const end = outcome === 'done' ? '' : ` ${outcome === 'right' ? right : wrong}`;
  return { kind: 'note', note: `${build} ${inWords(key, language)}${end}: ${said}` };
}

/** The note that says from which step on everything was taken off again, and why. */
export function takenOffTold(step: number, because: string, language: 'en' | 'es'): Told {
  return builtTold(`back ${step}`, 'done', because, language);
}

/** What stands on the bench at a check: the unit with the parts of the steps so far. */
export function askHalfBuilt(train: Train, plan: Plan, { number }: Step): Train {
  const on = new Set(
    plan.steps.flatMap((step) => {
      return step.does === 'fit' && step.number <= number ? [step.part.name] : [];
    }),
  );
  return halfBuilt(train, ({ name }) => on.has(name));
}

/** What a right build does in a check of a step, turned each way; proved. */
export function askFeel(
  half: Train,
  step: Step,
  { hold, turn }: PlannedCheck,
): Readonly<Record<Way, HandAnswer>> {
  const on = step.does === 'air check' || step.does === 'pawl check' ? [step.device.name] : [];
  const held = hold ? [hold.member] : [];
  const felt = (way: Way) => hand(half, { hold: held, turn: turn.member, way, on });
  return { clockwise: felt('clockwise'), anticlockwise: felt('anticlockwise') };
}

function checksOf(step: Step): readonly PlannedCheck[] {
  if (step.does === 'fit') return step.checks;
  return (step.does === 'air check' || step.does === 'pawl check') && step.check
    ? [step.check]
    : [];
}

// What the note of a step itself must name: the steps of another file have other numbers.
function subjectOf(task: BuildTask): string {
  if (task.what !== 'do') return '';
  const { step } = task;
  switch (step.does) {
    case 'fit':
    case 'height':
    case 'tighten':
      return step.part.name;
    case 'clearance':
      return step.pack.device;
    case 'band':
      return step.band.device;
    case 'end play':
      return step.endPlay.shaft;
    case 'preload':
      return step.preload.bearings;
    case 'air check':
    case 'pawl check':
      return step.device.name;
    case 'turn over':
    case 'fill':
      return '';
  }
}

const WORDS = {
  en: {
    build: 'build',
    right: 'right',
    wrong: 'wrong',
    stop: 'stop',
    sound: 'sound',
    start: 'start',
    back: 'back to',
  },
  es: {
    build: 'armado',
    right: 'bien',
    wrong: 'mal',
    stop: 'alto',
    sound: 'sonido',
    start: 'arranque',
    back: 'de vuelta a',
  },
} as const;

const OUTCOMES = new Map<string, Outcome>([
  [WORDS.en.right, 'right'],
  [WORDS.es.right, 'right'],
  [WORDS.en.wrong, 'wrong'],
  [WORDS.es.wrong, 'wrong'],
]);

const STEP = String.raw`\d+(?:\.\d+| stop| alto| sound| sonido)?`;
const FROM = String.raw`(?:start|arranque|back to|de vuelta a) \d+`;
const NOTE = new RegExp(
  `^(?:build|armado) (${STEP}|${FROM})(?: (right|wrong|bien|mal))?: (.*)$`,
  'su',
);

// The words of a key in a language, and back.
const KEY_WORDS = ['stop', 'sound', 'start', 'back'] as const;

function inWords(key: string, language: 'en' | 'es'): string {
  return KEY_WORDS.reduce((text, word) => text.replace(word, WORDS[language][word]), key);
}

function keyIn(words: string): string {
  return KEY_WORDS.reduce((text, word) => {
    return text.replace(WORDS.en[word], word).replace(WORDS.es[word], word);
  }, words);
}
