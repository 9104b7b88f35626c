import { type Question, questionsInTurn } from '../../shop/lessons/index.ts';
import type { Train } from '../../engine/train/index.ts';

/** The questions that there are so far, and whether there will be more. */
export interface Asked {
  readonly questions: readonly Question[];
  readonly complete: boolean;
}

/**
 * Gives the first question at once, and the others as the page finds time for them; the returned
 * function ends it.
 */
export function askInTurn(train: Train, seed: number, give: (asked: Asked) => void): () => void {
  const turn = questionsInTurn(train, { seed });
  const questions: Question[] = [];
  let waits: ReturnType<typeof setTimeout> | undefined;
  const take = (until: number) => {
    let complete = false;
    do {
      const { value, done } = turn.next();
      if (value) questions.push(value);
      complete = done ?? false;
    } while (!complete && performance.now() < until);
    give({ questions: [...questions], complete });
    // Between two slices the page paints and hears its reader.
    if (!complete) waits = setTimeout(() => take(performance.now() + SLICE_MS), PAUSE_MS);
  };
  take(0);
  return () => clearTimeout(waits);
}

const SLICE_MS = 8;
const PAUSE_MS = 16;
