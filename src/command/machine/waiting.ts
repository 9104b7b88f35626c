/** How far a long answer has come: two counters that the thread beside may read. */
export interface Waiting {
  /** So many of so many are done. */
  readonly tell: (done: number, all: number) => void;
  readonly stop: () => void;
}

/** A line for whoever waits; in it stand SECONDS, and from the first count on DONE and ALL. */
export interface WaitingWords {
  readonly plain: string;
  readonly counted: string;
}

/**
 * Tells whoever waits, every few seconds, how long it has taken and how far it is. The engine
 * never pauses, so a thread beside it speaks; `file` is where, standard error by its number.
 */
export function waiting(words: WaitingWords, file = 2, everyMs = 3000): Waiting {
  const { Worker } = process.getBuiltinModule('node:worker_threads');
  const counts = new Int32Array(new SharedArrayBuffer(8));
  const worker = new Worker(SPEAKER, {
    eval: true,
    execArgv: [],
    workerData: { words, file, everyMs, counts },
  });
  worker.unref();
  return {
    tell: (done, all) => counts.set([done, all]),
    stop: () => void worker.terminate(),
  };
}

// Standard error of a thread goes through the one that is busy; a file's number does not.
const SPEAKER = `
const { words, file, everyMs, counts } = require('node:worker_threads').workerData;
const { writeSync } = require('node:fs');
const began = Date.now();
setInterval(() => {
  const values = { SECONDS: Math.round((Date.now() - began) / 1000), DONE: counts[0], ALL: counts[1] };
  const text = counts[1] > 0 ? words.counted : words.plain;
  try { writeSync(file, text.replace(/SECONDS|DONE|ALL/g, (name) => values[name]) + '\\n'); } catch {}
}, everyMs);
`;
