import { lastSeen, type Plan, type PlannedCheck, type Step } from '../../engine/plan/index.ts';
import { FIRST_START, type StartStep } from '../firststart/index.ts';

/**
 * One thing to be done and answered for: a step, what was heard at it, a check by hand, a stop
 * before something is covered; and when the unit is built, a step of the first start.
 */
export type BuildTask = {
  /** As an entry of a job names it: "9", "9 sound", "9.1", "9 stop", "start 3". */
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

/**
 * What a step itself is about, by the train file's name; undefined where it is about the unit. The
 * entry of it names this: the steps of another file have other numbers.
 */
export function subjectOf(task: BuildTask): string | undefined {
  if (task.what !== 'do') return undefined;
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
      return undefined;
  }
}

function checksOf(step: Step): readonly PlannedCheck[] {
  if (step.does === 'fit') return step.checks;
  return (step.does === 'air check' || step.does === 'pawl check') && step.check
    ? [step.check]
    : [];
}
