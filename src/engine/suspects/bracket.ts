import type { Observation } from './observation.ts';
import type { Belief } from './posterior.ts';

/**
 * The causes, as places among them, in groups that no observation parts: each leaves the same
 * observations unexplained (`mistaken`, by cause) as its group's likeliest, and what was seen
 * makes none more than so many times likelier or less likely than that one. How often things are
 * wrong beforehand parts nobody. The likeliest group first.
 */
export function groupsOf(
  { causes, fits }: Belief,
  mistaken: readonly (readonly Observation[])[],
): number[][] {
  const left = causes.map((_, c) => c).toSorted((a, b) => chance(b) - chance(a) || a - b);
  const groups: number[][] = [];
  for (let leader = left[0]; leader !== undefined; leader = left[0]) {
    const fit = fits[leader] as number;
    const missed = mistaken[leader] as readonly Observation[];
    const group = left.filter((c) => {
      const close = Math.abs((fits[c] as number) - fit) <= PARTS;
      return close && areSame(mistaken[c] as readonly Observation[], missed);
    });
    groups.push(group);
    left.splice(0, left.length, ...left.filter((c) => !group.includes(c)));
  }
  const sum = (group: readonly number[]) => group.reduce((total, c) => total + chance(c), 0);
  return groups.toSorted((a, b) => sum(b) - sum(a));

  function chance(c: number): number {
    return causes[c] as number;
  }
}

function areSame(some: readonly Observation[], others: readonly Observation[]): boolean {
  return some.length === others.length && some.every((one) => others.includes(one));
}

// Twenty times: a smell does not part, one answer of somebody who was sure does.
const PARTS = Math.log(20);
