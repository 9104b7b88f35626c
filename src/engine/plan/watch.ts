import { subjectOf, type Task } from './agenda.ts';
import type { Catcher, Watched } from './answer.ts';
import type { Instead, Made } from './mistakes.ts';

/**
 * What catches a mistake, and until when it can be caught: by the hand check at the part that is
 * the `felt`-th to go on; else by the first thing instead that the build has. While nothing
 * covers it, eyes may still find it; once that is past, it is caught at the last by its catcher.
 */
export function watchedBy(made: Made, felt: number | undefined, agenda: readonly Task[]): Watched {
  const { mistake, part } = made;
  const madeAt = fittedAt(made.made, agenda);
  const caught =
    felt === undefined
      ? insteadOf(made.instead, madeAt, agenda)
      : { step: fittedAt(felt, agenda), by: 'hand check' as const };
  const open = lastWith(made.open, agenda);
  return { mistake, part, made: madeAt, caught, open, until: Math.max(open, caught.step) };
}

function insteadOf(
  ways: readonly Instead[],
  madeAt: number,
  agenda: readonly Task[],
): { readonly step: number; readonly by: Catcher } {
  for (const way of ways) {
    if (!('of' in way)) return { step: madeAt, by: way.by };
    const task = agenda.find((its) => its.does === way.by && isOf(its, way.of));
    if (task && task.number >= madeAt) return { step: task.number, by: way.by };
  }
  throw new Error('nothing catches a mistake');
}

function isOf(task: Task, name: string): boolean {
  switch (task.does) {
    case 'fit':
    case 'turn over':
    case 'tighten':
    case 'fill':
      return false;
    default:
      return subjectOf(task) === name;
  }
}

// The step at which the n-th part goes on.
function fittedAt(n: number, agenda: readonly Task[]): number {
  return agenda.find(({ does, on }) => does === 'fit' && on === n)?.number ?? 0;
}

// The last step with n parts on; while the unit is turned over nothing is put right.
function lastWith(n: number, agenda: readonly Task[]): number {
  return agenda.findLast(({ does, on }) => does !== 'turn over' && on <= n)?.number ?? 0;
}
