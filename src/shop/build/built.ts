import type { Plan } from '../../engine/plan/index.ts';
import type { FoldedEntry, FoldedJob, Told } from '../records/index.ts';
import { type BuildTask, buildTasks, subjectOf } from './tasks.ts';

/** How a task ended, and the entry that says so. */
export interface Answered {
  readonly outcome: Outcome;
  readonly said: string;
  readonly entry: FoldedEntry;
}

/** `found`: it stood so when the unit was taken up; nobody here did it, or looked. */
export type Outcome = 'done' | 'right' | 'wrong' | 'found';

/**
 * Where a build stands by the entries of a job, by the keys of its tasks: the last word on each
 * counts. What was taken off again, back to a step, is open from there. With a step that was found
 * so, all that is before it was, except what must be looked at: each stop is still open.
 */
export function builtIn(plan: Plan, job: FoldedJob | undefined): ReadonlyMap<string, Answered> {
  const tasks = new Map(buildTasks(plan).map((task) => [task.key, task]));
  const answered = new Map<string, Answered>();
  for (const entry of job?.entries ?? []) {
    const { told, struckBy } = entry;
    if (struckBy || !told) continue;
    if (told.kind === 'unbuilt') {
      for (const [its, task] of tasks) {
        if (task.what === 'start' || task.step.number >= Number(told.step)) answered.delete(its);
      }
    }
    if (told.kind !== 'built') continue;
    const task = tasks.get(told.task);
    if (!task) continue;
    const subject = subjectOf(task);
    if (subject !== undefined && told.of !== subject) continue;
    const { went: outcome = 'done', said = told.of ?? '' } = told;
    const its: Answered = { outcome, said, entry };
    if (outcome === 'found' && task.what === 'do') {
      for (const [key, before] of tasks) {
        if (before === task) break;
        const old = answered.get(key)?.outcome;
        if (before.what !== 'stop' && (old ?? 'wrong') === 'wrong') answered.set(key, its);
      }
    }
    answered.set(told.task, its);
  }
  return answered;
}

/**
 * What a job is told of a task that ended so. The name of what it is of is not said again; a step that
 * is of the whole unit is of what is said.
 */
export function builtTold(task: BuildTask, outcome: Outcome, said?: string): Told {
  const of = subjectOf(task) ?? (task.what === 'do' ? said : undefined);
  return {
    kind: 'built',
    task: task.key,
    ...(of !== undefined && { of }),
    ...(outcome !== 'done' && { went: outcome }),
    ...(said !== undefined && said !== '' && said !== of && { said }),
  };
}
