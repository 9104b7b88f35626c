import { signal } from '@preact/signals';
import { recalled, remember } from '../words/index.ts';

/** How long this browser keeps a job that is nowhere else. */
export type Keeping =
  /** Until it is discarded here. */
  | 'lasting'
  /** As long as the page is opened now and then; some browsers forget it after seven idle days. */
  | 'while used'
  /** Not at all: storage is forbidden, or broken. */
  | 'nothing';

/** Undefined until it is known. */
export const keeping = signal<Keeping | undefined>(undefined);

/** Whether there is room for a few photographs yet; told before there is none. */
export const nearlyFull = signal(false);

const FEW_BYTES = 20 * 2 ** 20;

/** Whether it was said lately that a browser may forget a page, and read. */
export const idleKnown = signal(isLately(recalled('idle known', ['browser'])));

/** It need not be said again for a while: before the seven days are over it is. */
export function knowIdle(): void {
  idleKnown.value = true;
  remember('idle known', new Date().toISOString(), ['browser']);
}

function isLately(moment: string): boolean {
  return Date.now() - Date.parse(moment) < 3 * 24 * 60 * 60 * 1000;
}

/** Finds out; with `ask` the browser is asked to keep what is here for good, as it may. */
export async function lookAtKeeping(works: boolean, ask = false): Promise<void> {
  const { storage } = navigator as { readonly storage?: StorageManager };
  const quiet = <Its>(its: Promise<Its> | undefined, or: Its) => its?.catch(() => or) ?? or;
  const lasts =
    (await quiet(storage?.persisted?.(), false)) ||
    (ask && (await quiet(storage?.persist?.(), false)));
  keeping.value = works ? (lasts ? 'lasting' : 'while used') : 'nothing';
  const { quota, usage } = await quiet<StorageEstimate>(storage?.estimate?.(), {});
  nearlyFull.value = works && quota !== undefined && quota - (usage ?? 0) < FEW_BYTES;
}
