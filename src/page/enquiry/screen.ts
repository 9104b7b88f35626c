/** What is in front of a person: one question at a time. */
export type Screen =
  /** What the driver says. */
  | { readonly at: 'driver' }
  /** Whatever is worth most now. */
  | { readonly at: 'next' }
  /** Every test, to choose one. */
  | { readonly at: 'tests' }
  /** A hand check of one's own. */
  | { readonly at: 'hands' }
  /** A test, by the name that a file of what was seen has for it. */
  | { readonly at: 'test'; readonly test: string };

interface Remembered {
  readonly screen: Screen;
  readonly skipped: readonly string[];
}

const START: Remembered = { screen: { at: 'driver' }, skipped: [] };

/** Where somebody was with a job, or a train in none, in this tab; a reload comes back to it. */
export function recall(work: string): Remembered {
  try {
    const kept = JSON.parse(sessionStorage.getItem(placeOf(work)) ?? 'null') as Remembered | null;
    return kept ?? START;
  } catch {
    return START;
  }
}

export function remember(work: string, its: Remembered): void {
  try {
    sessionStorage.setItem(placeOf(work), JSON.stringify(its));
  } catch {
    // Nothing is kept here: a reload begins at the driver's words.
  }
}

function placeOf(work: string): string {
  return `holdturn enquiry ${work}`;
}
