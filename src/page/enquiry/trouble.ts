import { NoAnswer } from '../../asking/request/index.ts';
import { refusedText } from '../../telling/narrative/index.ts';
import { voiceNow } from '../words/index.ts';

/** Why something came to nothing, in a sentence. */
export function troubleText(error: unknown): string {
  if (error instanceof NoAnswer) return refusedText(error.why, '', voiceNow());
  return error instanceof Error ? error.message : `${error as string}`;
}
