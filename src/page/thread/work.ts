import { NoAnswer } from '../../asking/request/index.ts';
import { Answering, type Beside } from './answering.ts';

/** The other thread: takes a question at a time, and gives what comes of it back by its number. */
let answering: Answering | undefined;

addEventListener('message', ({ data }: MessageEvent<Sent>) => {
  const { number, ask, takes, experience } = data;
  answering ??= new Answering(experience);
  try {
    postMessage({ number, gives: answering.answer(ask, takes as never) });
  } catch (error) {
    if (error instanceof NoAnswer) postMessage({ number, refused: error.why });
    else postMessage({ number, failed: error instanceof Error ? error.message : `${error}` });
  }
});

interface Sent {
  readonly number: number;
  readonly ask: keyof Beside;
  readonly takes: unknown;
  /** The shop's experience, the same all along. */
  readonly experience: string;
}
