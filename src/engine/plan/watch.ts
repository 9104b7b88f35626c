import { subjectOf, type Task } from './agenda.ts';
import type { Catcher, Step, Watched } from './answer.ts';
import type { Made } from './mistakes.ts';

/**
 * What catches a mistake, and until when it can be caught: by the hand check at the part that is
 * the `felt`-th to go on; else by the first thing instead that the build has. While nothing
 * covers it, eyes may still find it; once that is past, it is caught at the last by its catcher.
 */
export function watchedBy(
  made: Made,
  felt: number | undefined,
  steps: readonly Step[],
  agenda: readonly Task[],
): Watched {
  const { mistake, part } = made;
  const madeAt = fittedAt(made.made, agenda);
  const caught =
    felt === undefined
      ? insteadOf(made, madeAt, steps)
      : { step: fittedAt(felt, agenda), by: 'hand check' as const };
  const open = lastWith(made.open, agenda);
  return { mistake, part, made: madeAt, caught, open, until: Math.max(open, caught.step) };
}

function insteadOf(
  { instead, mistake }: Made,
  madeAt: number,
  steps: readonly Step[],
): { readonly step: number; readonly by: Catcher } {
  const shown = steps.find((step) => {
    return (
      (step.does === 'air check' || step.does === 'pawl check') &&
      step.check?.wrong.some((its) => its.mistakes.includes(mistake))
    );
  });
  for (const way of instead) {
    if ('of' in way) {
      const task = steps.find((step) => step.does === way.by && isOf(step, way.of));
      if (task && task.number >= madeAt) return { step: task.number, by: way.by };
      // What nobody wrote how to measure is left to the air that shows it.
    } else if (way.by === 'measure' && shown) return { step: shown.number, by: 'air check' };
    else return { step: madeAt, by: way.by };
  }
  throw new Error('nothing catches a mistake');
}

function isOf(step: Step, name: string): boolean {
  switch (step.does) {
    case 'fit':
    case 'turn over':
    case 'tighten':
    case 'fill':
      return false;
    default:
      return subjectOf(step) === name;
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
