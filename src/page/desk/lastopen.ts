/** A file that a tab has open: a reload comes back to it. */
interface LastOpen {
  readonly name: string;
  readonly text: string;
  /** As it stands on disk; absent for one that never was saved. */
  readonly saved?: string | undefined;
}

const KEY = 'holdturn open';

/** Remembers what is open, as long as the tab lives; undefined: nothing that is worth it. */
export function rememberOpen(its: LastOpen | undefined): void {
  try {
    if (its) sessionStorage.setItem(KEY, JSON.stringify(its));
    else sessionStorage.removeItem(KEY);
  } catch {
    // Forbidden, or full: then a reload begins anew.
  }
}

export function lastOpen(): LastOpen | undefined {
  try {
    const its = JSON.parse(sessionStorage.getItem(KEY) ?? 'null') as Partial<LastOpen> | null;
    if (typeof its?.name !== 'string' || typeof its.text !== 'string') return undefined;
    const { name, text, saved } = its;
    return { name, text, ...(typeof saved === 'string' && { saved }) };
  } catch {
    return undefined;
  }
}
