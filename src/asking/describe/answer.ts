import { fits, isName } from '../../engine/form/index.ts';
import { memberTaken } from './taken.ts';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Expected, Problem, Refusal } from '../../engine/yaml/index.ts';
import type { Inquiry, Reply } from './asking.ts';
import { doubtOf } from './doubt.ts';
import { cannotAlternate } from './plates.ts';
import { nextPrompt } from './prompts.ts';
import { written } from './writing.ts';

/** What an answer leads to: the round goes on, its text is written, or it is wrong at its question. */
export type Answered =
  | { readonly further: Inquiry }
  | { readonly text: string }
  | { readonly wrong: Wrong };

/** What is wrong with an answer; a person answers anew, or goes back. */
export type Wrong =
  | { readonly wrong: Refusal }
  /** The file takes none such. */
  | { readonly wrong: 'expected'; readonly what: Expected; readonly found: string }
  /** It is no other than what it cannot be: the other end, the other race, the case. */
  | { readonly wrong: 'same piece'; readonly name: string }
  /** So many frictions and steels cannot lie in turn. */
  | { readonly wrong: 'cannot alternate' }
  /** It hardly ever is over so much; said once more, it stands. */
  | { readonly wrong: 'doubt'; readonly most: number }
  | { readonly wrong: 'must be said' }
  /** The file would have a mistake that it had not. */
  | { readonly wrong: 'mistake'; readonly problem: Problem };

/**
 * Answers the question that is next in a round. `sure`: it was said before, and doubted. The last
 * answer writes the round into the text.
 */
export function answer(
  text: string,
  train: Train,
  inquiry: Inquiry,
  said: Reply,
  sure = false,
): Answered {
  const prompt = nextPrompt(inquiry, train);
  if (!prompt) return { further: inquiry };
  const answers = new Map(inquiry.answers).set(prompt.key, said);
  const further: Inquiry = { ...inquiry, answers };
  const named = typeof said === 'string' ? said : undefined;
  if (named !== undefined && prompt.without.includes(named)) {
    const isNew = prompt.kind === 'text' || prompt.key.endsWith('@');
    return { wrong: isNew ? { wrong: 'name taken' } : { wrong: 'same piece', name: named } };
  }
  if (memberTaken(train, inquiry, prompt.key, said)) return { wrong: { wrong: 'name taken' } };
  if (prompt.kind === 'text' && !isNamed(inquiry, said)) return { wrong: { wrong: 'not a name' } };
  if (said === null && !prompt.optional) return { wrong: { wrong: 'must be said' } };
  if (prompt.form && said !== null && ![said].flat().every((one) => fits(prompt.form!, one))) {
    const { message } = prompt.form as { readonly message?: Expected };
    if (message) return { wrong: { wrong: 'expected', what: message, found: `${said}` } };
  }
  if (prompt.key.endsWith('.plates.steels')) {
    if (cannotAlternate(prompt.key.replace(/\.steels$/u, ''), answers))
      return { wrong: { wrong: 'cannot alternate' } };
  }
  const most = sure ? undefined : doubtOf(prompt.key, said);
  if (most !== undefined) return { wrong: { wrong: 'doubt', most } };
  if (nextPrompt(further, train)) return { further };
  const edited = written(text, train, further);
  if ('refused' in edited) return { wrong: { wrong: edited.refused } };
  const problem = newMistake(text, edited.text);
  return problem ? { wrong: { wrong: 'mistake', problem } } : edited;
}

// A mistake of the text that was not there before; what is still missing is none.
function newMistake(before: string, after: string): Problem | undefined {
  const had = mistakesIn(before);
  // While a mistake hides others, what comes to light is not this answer's.
  if (had.length > 0) return undefined;
  return mistakesIn(after)[0];
}

function mistakesIn(text: string): Problem[] {
  return readTrain(text).problems.filter(({ severity, problem }) => {
    return severity === 'error' && problem !== 'missing key';
  });
}

// A train may be called anything; what is named within the file may not.
function isNamed({ topic }: Inquiry, said: Reply): boolean {
  if (typeof said !== 'string') return false;
  return topic === 'name' ? said.trim() !== '' : isName(said);
}
