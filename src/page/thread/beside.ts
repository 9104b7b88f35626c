import { NoAnswer, type Refused } from '../../asking/request/index.ts';
import { readExperience } from '../desk/index.ts';
import type { Beside } from './answering.ts';

/**
 * Asks the other thread, which begins with the first question: the page goes on meanwhile. Throws
 * `NoAnswer` where there is none.
 */
export async function beside<Ask extends keyof Beside>(
  ask: Ask,
  takes: Beside[Ask]['takes'],
): Promise<Beside[Ask]['gives']> {
  const experience = await readExperience();
  thread ??= started();
  const number = (count += 1);
  return new Promise((resolve, reject) => {
    waiting.set(number, { resolve: resolve as (gives: unknown) => void, reject });
    thread?.postMessage({ number, ask, takes, experience });
  });
}

let thread: Worker | undefined;
let count = 0;
const waiting = new Map<number, Waiting>();

interface Waiting {
  readonly resolve: (gives: unknown) => void;
  readonly reject: (error: Error) => void;
}

interface Came {
  readonly number: number;
  readonly gives?: unknown;
  readonly refused?: Refused;
  readonly failed?: string;
}

function started(): Worker {
  const worker = new Worker(new URL('./work.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<Came>) => {
    const asked = waiting.get(data.number);
    waiting.delete(data.number);
    if (data.refused) asked?.reject(new NoAnswer(data.refused));
    else if (data.failed !== undefined) asked?.reject(new Error(data.failed));
    else asked?.resolve(data.gives);
  });
  // It could not be fetched, or it fell: whoever waits is told, and the next question begins it anew.
  worker.addEventListener('error', ({ message }) => {
    thread = undefined;
    worker.terminate();
    for (const { reject } of waiting.values()) reject(new Error(message));
    waiting.clear();
  });
  return worker;
}
