import type { Given } from '../../asking/request/index.ts';

/** A job as this browser keeps it, beside its lines and its photographs. */
export interface KeptJob {
  /** Its own in this browser. */
  readonly id: string;
  /** The name of its file on disk, or the one that it would be saved by. */
  readonly name: string;
  /** What stands above the entries of its file. */
  readonly header: string;
  /** The train that it was opened for, as it then was. */
  readonly train?: Given;
  /** A train that lay beside it by the name of its own, and is another text than it was begun with. */
  readonly beside?: Given;
  /** The file on disk that each entry is written to as well. */
  readonly handle?: FileSystemFileHandle;
  /** The file that it was saved as last, and how many lines it then had. */
  readonly saved?: { readonly name: string; readonly lines: number };
}

/** A picture of a job, by the name that the entry tells. */
export interface Photograph {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Why something is not kept. */
export class NotKept extends Error {
  readonly why: 'forbidden' | 'full' | 'gone' | 'failed';

  constructor(why: NotKept['why'], message: string = why) {
    super(message);
    this.why = why;
  }
}

/**
 * The jobs that this browser keeps. What a promise told to be kept is on the disk: its transaction
 * is complete, and the browser was asked to wait for the disk. Every promise may throw `NotKept`.
 */
export class JobStore {
  private opening: Promise<IDBDatabase> | undefined;

  /** Every job with its lines, in the order in which they were written here. */
  async all(): Promise<readonly (KeptJob & { readonly lines: readonly string[] })[]> {
    return this.within('readonly', async (tx) => {
      const jobs = await asked<KeptJob[]>(tx.objectStore('jobs').getAll());
      const lines = await Promise.all(jobs.map(({ id }) => linesIn(tx, id)));
      return jobs.map((job, i) => ({ ...job, lines: lines[i] ?? [] }));
    });
  }

  /** A job's lines; throws `gone` where there is no such job. */
  async lines(id: string): Promise<readonly string[]> {
    return this.within('readonly', async (tx) => {
      await mustBeThere(tx, id);
      return linesIn(tx, id);
    });
  }

  /** Puts a whole job here, in the place of what was kept under its id. */
  async put(
    job: KeptJob,
    lines: readonly string[],
    photographs: readonly Photograph[] = [],
  ): Promise<void> {
    return this.within('readwrite', async (tx) => {
      tx.objectStore('jobs').put(job);
      await addTo(tx, job.id, lines, photographs);
    });
  }

  /** Adds to a job; a line that it has already is not added twice. */
  async append(
    id: string,
    lines: readonly string[],
    photographs: readonly Photograph[] = [],
  ): Promise<void> {
    return this.within('readwrite', async (tx) => {
      await mustBeThere(tx, id);
      await addTo(tx, id, lines, photographs);
    });
  }

  /** Changes what is known of a job beside its lines. */
  async change(id: string, its: Partial<Omit<KeptJob, 'id'>>): Promise<void> {
    return this.within('readwrite', async (tx) => {
      const job = await mustBeThere(tx, id);
      tx.objectStore('jobs').put({ ...job, ...its });
    });
  }

  async photographs(id: string): Promise<readonly Photograph[]> {
    return this.within('readonly', async (tx) => {
      const range = IDBKeyRange.bound([id], [id, []]);
      return asked<Photograph[]>(tx.objectStore('photographs').getAll(range));
    });
  }

  async remove(id: string): Promise<void> {
    return this.within('readwrite', async (tx) => {
      tx.objectStore('jobs').delete(id);
      tx.objectStore('photographs').delete(IDBKeyRange.bound([id], [id, []]));
      const lines = tx.objectStore('lines');
      const keys = await asked<IDBValidKey[]>(lines.index('job').getAllKeys(id));
      for (const key of keys) lines.delete(key);
    });
  }

  // One transaction; it is complete when the promise resolves, and has done nothing when it throws.
  private async within<Its>(
    mode: IDBTransactionMode,
    work: (tx: IDBTransaction) => Promise<Its>,
  ): Promise<Its> {
    const database = await this.database();
    let tx: IDBTransaction;
    try {
      tx = database.transaction(STORES, mode, { durability: 'strict' });
    } catch (error) {
      this.opening = undefined;
      throw notKept(error);
    }
    const complete = new Promise<void>((resolve, reject) => {
      tx.addEventListener('complete', () => resolve());
      tx.addEventListener('abort', () => reject(notKept(tx.error)));
    });
    try {
      const its = await work(tx);
      await complete;
      return its;
    } catch (error) {
      complete.catch(() => {});
      abort(tx);
      throw notKept(tx.error ?? error);
    }
  }

  private database(): Promise<IDBDatabase> {
    this.opening ??= openDatabase(() => (this.opening = undefined));
    return this.opening.catch((error: unknown) => {
      this.opening = undefined;
      throw new NotKept('forbidden', error instanceof Error ? error.message : '');
    });
  }
}

const STORES = ['jobs', 'lines', 'photographs'];

function openDatabase(lost: () => void): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    // Throws, or is not there at all, where a browser forbids it.
    const request = indexedDB.open('holdturn jobs', 1);
    request.addEventListener('upgradeneeded', () => {
      const database = request.result;
      database.createObjectStore('jobs', { keyPath: 'id' });
      database.createObjectStore('lines', { autoIncrement: true }).createIndex('job', 'job');
      database.createObjectStore('photographs', { keyPath: ['job', 'name'] });
    });
    request.addEventListener('error', () => reject(request.error ?? new Error('no database')));
    request.addEventListener('success', () => {
      const database = request.result;
      database.addEventListener('close', lost);
      // A newer page, in another tab, may change its form.
      database.addEventListener('versionchange', () => {
        database.close();
        lost();
      });
      resolve(database);
    });
  });
}

async function addTo(
  tx: IDBTransaction,
  job: string,
  lines: readonly string[],
  photographs: readonly Photograph[],
): Promise<void> {
  const known = new Set(await linesIn(tx, job));
  const kept = tx.objectStore('lines');
  for (const line of lines) if (!known.has(line)) kept.add({ job, line });
  const pictures = tx.objectStore('photographs');
  for (const { name, bytes } of photographs) pictures.put({ job, name, bytes });
}

async function linesIn(tx: IDBTransaction, job: string): Promise<string[]> {
  const index = tx.objectStore('lines').index('job');
  const all = await asked<{ readonly line: string }[]>(index.getAll(job));
  return all.map(({ line }) => line);
}

async function mustBeThere(tx: IDBTransaction, id: string): Promise<KeptJob> {
  const job = await asked<KeptJob | undefined>(tx.objectStore('jobs').get(id));
  if (!job) throw new NotKept('gone');
  return job;
}

function asked<Its>(request: IDBRequest): Promise<Its> {
  return new Promise((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result as Its));
    request.addEventListener('error', () => reject(request.error ?? new Error('no answer')));
  });
}

function abort(tx: IDBTransaction): void {
  try {
    tx.abort();
  } catch {
    // It has ended already.
  }
}

function notKept(error: unknown): NotKept {
  if (error instanceof NotKept) return error;
  const { name = '', message = '' } = error instanceof Error ? error : {};
  return new NotKept(name === 'QuotaExceededError' ? 'full' : 'failed', message || name);
}
