import { experienceUsed } from '../desk/index.ts';
import type { Beside } from './answering.ts';
import { type Came, Queue } from './queue.ts';

/**
 * Asks the other thread, which begins with the first question: the page goes on meanwhile. Throws
 * `NoAnswer` where there is none, and `Superseded` where the same was asked anew before it was begun.
 */
export async function beside<Ask extends keyof Beside>(
  ask: Ask,
  takes: Beside[Ask]['takes'],
): Promise<Beside[Ask]['gives']> {
  const experience = await experienceUsed();
  return queue.ask({ ask, takes: { takes, experience } }) as Promise<Beside[Ask]['gives']>;
}

const queue = new Queue(({ ask, takes }) => {
  thread ??= started();
  thread.postMessage({ ask, ...(takes as object) });
});

let thread: Worker | undefined;

function started(): Worker {
  const worker = new Worker(new URL('./work.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<Came>) => queue.came(data));
  worker.addEventListener('messageerror', () => queue.came({ failed: 'messageerror' }));
  // It could not be fetched, or it fell: whoever waits is told, and the next question begins it anew.
  worker.addEventListener('error', ({ message }) => {
    thread = undefined;
    worker.terminate();
    queue.came({ failed: message });
  });
  return worker;
}
