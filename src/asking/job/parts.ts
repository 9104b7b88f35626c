import type { FoldedJob, Told } from '../../shop/records/index.ts';
import { isFault } from '../../shop/strip/index.ts';

/** How a part of the unit stands by what was written down of it. */
export interface PartStanding {
  readonly off: boolean;
  /** What it was found to be, in the order of time, each with its entry. */
  readonly found: readonly Found[];
  /** How it went on last, where it did: a new one, or the same, and why. */
  readonly on?: { readonly replaced: boolean; readonly why?: string };
}

export interface Found {
  readonly id: string;
  readonly says: string;
  /** It speaks against putting the part on again. */
  readonly isFault: boolean;
}

/** How each of these parts stands in a job: what is off, and what was found. */
export function partsIn(
  job: FoldedJob | undefined,
  names: readonly string[],
): ReadonlyMap<string, PartStanding> {
  const parts = new Map<string, PartStanding>(names.map((name) => [name, ON]));
  // At which step of the build a part went on.
  const built = new Map<string, number>();
  for (const { id, told, struckBy } of job?.entries ?? []) {
    if (!told || struckBy) continue;
    if (told.kind === 'note') {
      const name = names.find((its) => told.note.startsWith(`${its}: `));
      const part = name === undefined ? undefined : parts.get(name);
      if (name === undefined || !part) continue;
      const says = told.note.slice(name.length + 2);
      parts.set(name, { ...part, found: [...part.found, { id, says, isFault: isFault(says) }] });
      continue;
    }
    if (told.kind === 'unbuilt') takeOff(parts, built, Number(told.step));
    if (told.kind === 'built') putOn(parts, built, told);
    if (told.kind !== 'removed' && told.kind !== 'installed') continue;
    built.delete(told.part);
    const { found } = parts.get(told.part) ?? {};
    if (!found) continue;
    if (told.kind === 'removed') parts.set(told.part, { off: true, found });
    else {
      const { replaced = false, why } = told;
      const on = { replaced, ...(why !== undefined && { why }) };
      parts.set(told.part, { off: false, found, on });
    }
  }
  return parts;
}

// The first step that is of a part fits it; it goes on as it is, or as was said just before.
function putOn(
  parts: Map<string, PartStanding>,
  built: Map<string, number>,
  { task, of = '' }: Extract<Told, { kind: 'built' }>,
): void {
  const part = parts.get(of);
  if (!part || !/^\d+$/u.test(task) || built.has(of)) return;
  if (part.off) parts.set(of, { off: false, found: part.found });
  else if (!part.on) return;
  built.set(of, Number(task));
}

function takeOff(parts: Map<string, PartStanding>, built: Map<string, number>, step: number): void {
  for (const [name, at] of built) {
    const { found } = parts.get(name) ?? {};
    if (!found || at < step) continue;
    built.delete(name);
    parts.set(name, { off: true, found });
  }
}

/** What speaks against a part as it is now: nothing, once another is in its place. */
export function faultsOf({ found, on }: PartStanding): readonly Found[] {
  return on?.replaced ? [] : found.filter((its) => its.isFault);
}

const ON: PartStanding = { off: false, found: [] };
