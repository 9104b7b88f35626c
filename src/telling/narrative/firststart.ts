import type { StartStep } from '../../shop/firststart/index.ts';
import type { Voice } from '../voice/index.ts';

/** A step of the first start in words: what it is, what can hurt there, and what is done. */
export interface StartTold {
  readonly title: string;
  readonly caution?: string;
  readonly text: string;
}

/** The words of a step of the first start: common practice, no source (`start.practice` says so). */
export function startTold({ does, danger }: StartStep, voice: Voice): StartTold {
  return {
    title: voice.say('start.title', { step: does }),
    ...(danger && { caution: voice.say('start.danger', { danger }) }),
    text: voice.say(`start.${does}`),
  };
}
