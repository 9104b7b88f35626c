import { createStore, get, set } from 'idb-keyval';
import type { MeasuredThing } from '../../asking/build/index.ts';
import type { MeasuredKind } from '../../engine/train/index.ts';
import type { Told } from '../../shop/records/index.ts';
import type { Typed } from './ways.ts';

/** What is measured now, and by which way. */
export interface Place {
  readonly kind: MeasuredKind;
  readonly name: string;
  readonly way: string;
  /** Readings; or the limits, or the shelf, that are written down. */
  readonly side: 'read' | 'limits' | 'shelf';
}

/** Whether a thing is the one of a place. */
export function isAt(thing: MeasuredThing, { kind, name }: Pick<Place, 'kind' | 'name'>): boolean {
  return thing.kind === kind && thing.name === name;
}

/** Something that was told while no job was open. */
export interface Loose {
  readonly id: string;
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly told: Told;
  /** Why it was struck. */
  readonly struck?: string;
}

/** What this room has of a job (or of a train, in no job) that is not written down yet. */
export interface Kept {
  readonly at?: Place;
  /** By `keyOf` of a place. */
  readonly typed: Readonly<Record<string, readonly Typed[]>>;
  /** Words beside the numbers: a source, a part. By `keyOf` of a place, and what they are. */
  readonly texts: Readonly<Record<string, string>>;
  readonly units: Readonly<Record<string, string>>;
  readonly used: readonly string[];
  readonly loose: readonly Loose[];
}

export const NOTHING: Kept = { typed: {}, texts: {}, units: {}, used: [], loose: [] };

/** What was kept of a job, or of a train in none; nothing where the browser keeps nothing. */
export async function keptOf(work: string): Promise<Kept> {
  try {
    const kept = await get<Kept>(work, store());
    return kept && Array.isArray(kept.loose) ? { ...NOTHING, ...kept } : NOTHING;
  } catch {
    return NOTHING;
  }
}

/** Resolves when the browser has it; false where it keeps nothing, or no more. */
export async function keep(work: string, kept: Kept): Promise<boolean> {
  try {
    await set(work, kept, store());
    return true;
  } catch {
    return false;
  }
}

// Made when it is first asked for: where storage is forbidden, that throws.
let made: ReturnType<typeof createStore> | undefined;
function store(): ReturnType<typeof createStore> {
  return (made ??= createStore('holdturn measure', 'readings'));
}

/** What is typed of a job and not written down, by the names of what is measured. */
export async function typedOf(work: string): Promise<readonly string[]> {
  const { typed } = await keptOf(work);
  const names = Object.entries(typed).flatMap(([key, its]) => {
    const name = key.slice(key.indexOf(': ') + 2, key.lastIndexOf(': '));
    return its.some(({ struck }) => !struck) ? [name] : [];
  });
  return [...new Set(names)];
}
