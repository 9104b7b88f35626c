import type { Plan, Step, Watched } from './answer.ts';

/**
 * Mistakes of which the next step takes away the sight, but those of the part that just went on:
 * after this step they are put right by stripping alone.
 */
export function lastSeen({ steps, mistakes }: Plan, { number }: Step): readonly Watched[] {
  if (number === steps.length) return [];
  const step = steps[number - 1];
  const newest = steps.findLast((its) => its.does === 'fit' && its.number <= number);
  const own = newest?.does === 'fit' ? newest.part.name : undefined;
  return mistakes.filter(({ open, part, mistake }) => {
    if (open !== number || (part === own && step?.does === 'fit')) return false;
    // Nobody has just tightened or measured what was left out.
    return part !== own || !('is' in mistake) || mistake.is !== 'left out';
  });
}
