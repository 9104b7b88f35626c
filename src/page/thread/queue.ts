import { NoAnswer, type Refused } from '../../asking/request/index.ts';

/** What is sent to the other thread, and what comes back for it. */
export interface Sent {
  readonly ask: string;
  readonly takes: unknown;
}
export interface Came {
  readonly gives?: unknown;
  readonly refused?: Refused;
  readonly failed?: string;
}

/** Somebody asked the same of something newer before this was begun. */
export class Superseded extends Error {}

/**
 * Questions that wait for the other thread, which takes one at a time. Of those that follow what a
 * person does (`LATEST`) only the newest waits; what a person waits for (`FIRST`) goes before others.
 */
export class Queue {
  private readonly send: (sent: Sent) => void;
  private readonly waiting: Waiting[] = [];
  private asked: Waiting | undefined;

  constructor(send: (sent: Sent) => void) {
    this.send = send;
  }

  ask(sent: Sent): Promise<unknown> {
    return new Promise((resolve, reject) => {
      const older = this.waiting.findIndex(({ sent: { ask } }) => ask === sent.ask);
      if (LATEST.has(sent.ask) && older >= 0) {
        for (const { reject: drop } of this.waiting.splice(older, 1)) drop(new Superseded());
      }
      const its = { sent, resolve, reject };
      if (FIRST.has(sent.ask)) this.waiting.unshift(its);
      else this.waiting.push(its);
      this.next();
    });
  }

  /** What was asked last has come, or will not. */
  came({ gives, refused, failed }: Came): void {
    const { asked } = this;
    this.asked = undefined;
    if (refused) asked?.reject(new NoAnswer(refused));
    else if (failed !== undefined) asked?.reject(new Error(failed));
    else asked?.resolve(gives);
    this.next();
  }

  private next(): void {
    if (this.asked) return;
    this.asked = this.waiting.shift();
    if (this.asked) this.send(this.asked.sent);
  }
}

interface Waiting {
  readonly sent: Sent;
  readonly resolve: (gives: unknown) => void;
  readonly reject: (error: Error) => void;
}

const LATEST: ReadonlySet<string> = new Set(['examine', 'question', 'explain', 'hand']);
const FIRST: ReadonlySet<string> = new Set(['fits', 'weighs']);
