/**
 * The candidate that was most likely meant by a name that is none of them, or undefined where
 * none is close. Case does not count; a candidate that contains the name (or is in it) is close.
 */
export function nearest(name: string, candidates: Iterable<string>): string | undefined {
  const wanted = name.toLowerCase();
  let best: string | undefined;
  // One letter is one slip away from any other.
  let least = wanted.length < 2 ? 1 : Math.max(1, Math.floor(wanted.length / 3)) + 1;
  let containing: string | undefined;
  for (const candidate of candidates) {
    const other = candidate.toLowerCase();
    const steps = distance(wanted, other, least);
    if (steps < least) [best, least] = [candidate, steps];
    const [short, long] = wanted.length < other.length ? [wanted, other] : [other, wanted];
    if (short.length >= 3 && long.includes(short)) containing ??= candidate;
  }
  return best ?? containing;
}

/** The nearest name as part of a finding; nothing where none is close. */
export function near(name: string, candidates: Iterable<string>): { readonly near?: string } {
  const found = nearest(name, candidates);
  return found === undefined ? {} : { near: found };
}

/**
 * Whether two names look like one name spelt twice: a slip or two apart, and with the same
 * digits, for "shaft 1" and "shaft 2" are meant to differ.
 */
export function looksLike(a: string, b: string): boolean {
  const digits = (name: string) => name.replace(/\P{Nd}/gu, '');
  const length = Math.min(a.length, b.length);
  const slips = length > 6 ? 2 : length > 3 ? 1 : 0;
  return digits(a) === digits(b) && distance(a.toLowerCase(), b.toLowerCase(), slips + 1) <= slips;
}

/**
 * How many letters must be put in, left out, changed, or swapped with their neighbour to make
 * one name of the other; `enough` where it is that many or more.
 */
export function distance(a: string, b: string, enough: number): number {
  if (Math.abs(a.length - b.length) >= enough) return enough;
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (above[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let steps = Math.min(change, (above[j] as number) + 1, (row[j - 1] as number) + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        steps = Math.min(steps, (before[j - 2] as number) + 1);
      }
      row.push(steps);
    }
    if (Math.min(...row) >= enough) return enough;
    [before, above] = [above, row];
  }
  return Math.min(enough, above[b.length] as number);
}
