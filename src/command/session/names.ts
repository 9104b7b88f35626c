import { unknown } from '../../asking/request/index.ts';
import { type Arguments, unknownWords } from '../../telling/narrative/index.ts';

/** What a refusal says of an unknown word of the command. */
export function suggestion(given: string, known: readonly string[]): Arguments {
  return unknownWords(unknown(given, known));
}
