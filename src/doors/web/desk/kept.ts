import { createStore, del, entries, set } from 'idb-keyval';

/** Work that is not on disk, kept in this browser: a draft a tab, until it is saved. */
export interface Draft {
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

/** Holds a lock with this tab's name for as long as it lives, so that others see that it does. */
export function live(): void {
  void navigator.locks?.request(lockOf(TAB), () => new Promise(() => {}));
}

/** Keeps the draft; false where the browser keeps nothing (forbidden, or full). */
export async function keep(draft: Draft): Promise<boolean> {
  try {
    await set(draft.tab, draft, drafts());
    return true;
  } catch {
    return false;
  }
}

/** Discards a draft; where nothing is kept there is nothing to discard. */
export async function forget(tab: string): Promise<void> {
  await del(tab, drafts()).catch(() => {});
}

/** The drafts of tabs that are gone, the latest first; of none where nothing is kept. */
export async function orphans(): Promise<Draft[]> {
  try {
    const kept = await entries<string, Draft>(drafts());
    const held = (await navigator.locks?.query())?.held ?? [];
    const living = new Set(held.map(({ name }) => name));
    return kept
      .map(([, draft]) => draft)
      .filter(({ tab }) => tab !== TAB && !living.has(lockOf(tab)))
      .toSorted((a, b) => b.at - a.at);
  } catch {
    return [];
  }
}

function lockOf(tab: string): string {
  return `holdturn ${tab}`;
}

// Made when it is first asked for: where storage is forbidden, that throws.
let store: ReturnType<typeof createStore> | undefined;
function drafts(): ReturnType<typeof createStore> {
  return (store ??= createStore('holdturn', 'drafts'));
}
