import { type Given, NoAnswer } from '../../asking/request/index.ts';
import { Answering, type Beside } from './answering.ts';

/** The other thread: takes a question at a time, and gives what comes of it back. */
let answering: Answering | undefined;

addEventListener('message', ({ data }: MessageEvent<Sent>) => {
  const { ask, takes, experience } = data;
  if (!answering?.knows(experience)) answering = new Answering(experience);
  try {
    postMessage({ gives: answering.answer(ask, takes as never) });
  } catch (error) {
    if (error instanceof NoAnswer) postMessage({ refused: error.why });
    else postMessage({ failed: error instanceof Error ? error.message : `${error}` });
  }
});

addEventListener('messageerror', () => postMessage({ failed: 'messageerror' }));

interface Sent {
  readonly ask: keyof Beside;
  readonly takes: unknown;
  readonly experience: Given;
}
