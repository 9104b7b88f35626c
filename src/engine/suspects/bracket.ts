import type { Belief } from './posterior.ts';

/**
 * The causes, as places among them, in groups that what was seen does not part: to each group's
 * likeliest cause, nothing makes another of it more than so many times likelier or less likely.
 * How often things are wrong beforehand parts nobody. Nor do they stand together if one of them
 * leaves more unexplained (`mistaken`, by cause) than the other. The group of the likeliest cause
 * first; but one that takes nobody for mistaken goes before it, where it is not far less likely.
 */
export function groupsOf({ causes, fits }: Belief, mistaken: readonly number[]): number[][] {
  const left = causes.map((_, c) => c).toSorted((a, b) => chance(b) - chance(a) || a - b);
  const groups: number[][] = [];
  for (let leader = left[0]; leader !== undefined; leader = left[0]) {
    const fit = fits[leader] as number;
    const missed = mistaken[leader] as number;
    const group = left.filter((c) => {
      return mistaken[c] === missed && Math.abs((fits[c] as number) - fit) <= PARTS;
    });
    groups.push(group);
    left.splice(0, left.length, ...left.filter((c) => !group.includes(c)));
  }
  const [top] = groups;
  if (!top) return groups;
  const sound = groups.find(([leader]) => {
    return (
      mistaken[leader as number] === 0 && chance(leader as number) * FAR >= chance(top[0] as number)
    );
  });
  return sound ? [sound, ...groups.filter((group) => group !== sound)] : groups;

  function chance(c: number): number {
    return causes[c] as number;
  }
}

const FAR = 10;

// Ten times: a smell does not part, one answer of somebody who was sure does.
const PARTS = Math.log(10);
