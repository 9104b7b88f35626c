import { jobIn } from '../../asking/job/index.ts';
import { linesBeyond, partsOf } from '../../shop/records/index.ts';

/** What came of writing a job to its file on disk. */
export type DiskOutcome =
  /** It has all that the page has; `beyond` is what somebody else wrote there meanwhile. */
  | { readonly disk: 'written'; readonly beyond: readonly string[] }
  /** The browser wants to be asked by a press first. */
  | { readonly disk: 'asks' }
  /** The file holds something else now. */
  | { readonly disk: 'another' }
  | { readonly disk: 'failed'; readonly why: string };

/**
 * Adds to a job's file the lines that it lacks. What stands there stays, byte for byte, whoever
 * wrote it: a file that somebody writes to at the same time is read again, and nothing is put over
 * theirs but in the instant between the last look and the browser's own exchange of the file.
 */
export async function uniteOnDisk(
  handle: FileSystemFileHandle,
  text: string,
  mayAsk = false,
): Promise<DiskOutcome> {
  try {
    if (!(await mayWrite(handle, mayAsk))) return { disk: 'asks' };
    return await alone(handle.name, () => unite(handle, text));
  } catch (error) {
    return { disk: 'failed', why: error instanceof Error ? error.message : '' };
  }
}

const TRIES = 20;

async function unite(handle: FileSystemFileHandle, text: string): Promise<DiskOutcome> {
  const ours = partsOf(text);
  for (let n = 0; n < TRIES; n++) {
    // oxlint-disable-next-line no-await-in-loop -- each look follows the write before it
    const before = await handle.getFile();
    // oxlint-disable-next-line no-await-in-loop
    const there = await before.text();
    if (there.trim() !== '' && !isSameJob(there, text)) return { disk: 'another' };
    const theirs = partsOf(there);
    const lacking = linesBeyond(theirs.lines, ours);
    const beyond = linesBeyond(ours.lines, theirs);
    if (there.trim() !== '' && lacking.length === 0) return { disk: 'written', beyond };
    const all =
      there.trim() === '' ? text : `${there}${lacking.map((line) => `\n${line}\n`).join('')}`;
    // oxlint-disable-next-line no-await-in-loop
    const stream = await handle.createWritable();
    // oxlint-disable-next-line no-await-in-loop
    await stream.write(all);
    // oxlint-disable-next-line no-await-in-loop
    const now = await handle.getFile();
    const isAsRead = now.lastModified === before.lastModified && now.size === before.size;
    // oxlint-disable-next-line no-await-in-loop
    await (isAsRead ? stream.close() : stream.abort());
  }
  return { disk: 'failed', why: 'busy' };
}

/** Whether two texts are copies of one job: opened by the same, at the same moment. */
export function isSameJob(one: string, other: string): boolean {
  try {
    const [a, b] = [one, other].map((text) => jobIn({ called: '', text }).job);
    return a !== undefined && b !== undefined && a.at !== '' && a.at === b.at && a.by === b.by;
  } catch {
    return false;
  }
}

async function mayWrite(handle: FileSystemFileHandle, mayAsk: boolean): Promise<boolean> {
  const asked = handle as FileSystemFileHandle & Partial<Permissions>;
  const mode = { mode: 'readwrite' } as const;
  if ((await asked.queryPermission?.(mode)) !== 'prompt') return true;
  return mayAsk && (await asked.requestPermission?.(mode)) === 'granted';
}

// Not in every browser, and so not in TypeScript's own list.
interface Permissions {
  queryPermission(its: { readonly mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission(its: { readonly mode: 'readwrite' }): Promise<PermissionState>;
}

// One tab at a time.
async function alone<Its>(name: string, work: () => Promise<Its>): Promise<Its> {
  if (!('locks' in navigator)) return work();
  return navigator.locks.request(`holdturn disk ${name}`, work) as Promise<Its>;
}
