import { createStore, del, entries, set } from 'idb-keyval';

/** Work that is not on disk, kept in this browser until it is saved or discarded. */
export interface Draft {
  /** Its own, for as long as it is kept. */
  readonly id: string;
  /** The tab in which it is open, or was. */
  readonly tab: string;
  readonly name: string;
  readonly text: string;
  /** The text on disk when the draft was begun; absent for a file that never was saved. */
  readonly saved?: string;
  /** Milliseconds since 1970. */
  readonly at: number;
}

/** This tab, as long as it lives; a tab that comes back after a crash is another. */
export const TAB: string = crypto.getRandomValues(new Uint32Array(3)).join('-');

/** A new draft's own name. */
export function newId(): string {
  return `${TAB} ${++count}`;
}
let count = 0;

/** Holds a lock with this tab's name for as long as it lives, so that others see that it does. */
export function live(): void {
  void navigator.locks?.request(lockOf(TAB), () => new Promise(() => {}));
}

/** Keeps the draft; false where the browser keeps nothing (forbidden, or full). */
export async function keep(draft: Draft): Promise<boolean> {
  try {
    await set(draft.id, draft, drafts());
    return true;
  } catch {
    return false;
  }
}

/** Discards a draft; where nothing is kept there is nothing to discard. */
export async function forget(id: string): Promise<void> {
  await del(id, drafts()).catch(() => {});
}

/**
 * The drafts of tabs that are gone, the latest first; of none where nothing is kept. What is no
 * draft, or half of one, is passed over and left where it is.
 */
export async function orphans(): Promise<Draft[]> {
  try {
    const kept = await entries<string, unknown>(drafts());
    const held = (await navigator.locks?.query())?.held ?? [];
    const living = new Set(held.map(({ name }) => name));
    return kept
      .flatMap(([id, value]) => draftIn(id, value) ?? [])
      .filter(({ tab }) => tab !== TAB && !living.has(lockOf(tab)))
      .toSorted((a, b) => b.at - a.at);
  } catch {
    return [];
  }
}

function draftIn(id: unknown, value: unknown): Draft | undefined {
  if (typeof id !== 'string' || typeof value !== 'object' || value === null) return undefined;
  const { tab, name, text, saved, at } = value as Partial<Record<keyof Draft, unknown>>;
  if (typeof tab !== 'string' || typeof name !== 'string' || typeof text !== 'string') {
    return undefined;
  }
  if (typeof at !== 'number' || Number.isNaN(new Date(at).getTime())) return undefined;
  return { id, tab, name, text, at, ...(typeof saved === 'string' && { saved }) };
}

function lockOf(tab: string): string {
  return `holdturn ${tab}`;
}

// Made when it is first asked for: where storage is forbidden, that throws.
let store: ReturnType<typeof createStore> | undefined;
function drafts(): ReturnType<typeof createStore> {
  return (store ??= createStore('holdturn', 'drafts'));
}
