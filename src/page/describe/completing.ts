import {
  type Completion,
  type CompletionContext,
  type CompletionResult,
  snippet,
  startCompletion,
} from '@codemirror/autocomplete';
import type { EditorState } from '@codemirror/state';
import type { Train } from '../../engine/train/index.ts';
import { offersAt } from '../../engine/trainfile/index.ts';
import { NOTHING } from '../../asking/describe/index.ts';

/** The train as far as it is. */
export type Known = () => Train | undefined;

/** What can come next in a train file, for the editor's list. */
export function completing(known: () => Train | undefined) {
  return ({ state, pos, explicit }: CompletionContext): CompletionResult | null => {
    const train = known() ?? NOTHING;
    const found = offersAt(state.sliceDoc(), pos, train);
    if (!found || (!explicit && found.from === pos && !isInvited(state, pos))) return null;
    // In the order of the file's form, and of the train.
    const options = found.offers.map(({ label, put, what }, i) => ({
      label,
      type: what,
      boost: -Math.min(i, 99),
      apply: applying(put),
    }));
    return { from: found.from, options, validFor: /^[^,:#[\]{}\n]*$/u };
  };
}

// Where more is to be typed, what can come there is offered at once.
function applying(put: string): NonNullable<Completion['apply']> {
  if (!put.includes('\0')) return put;
  const apply = snippet(asSnippet(put));
  return (view, completion, from, to) => {
    apply(view, completion, from, to);
    startCompletion(view);
  };
}

// Right after a colon, a bracket or a comma a list is welcome; on a bare line it is not.
function isInvited(state: EditorState, pos: number): boolean {
  return /[:[{,]\s?$/u.test(state.doc.lineAt(pos).text.slice(0, pos - state.doc.lineAt(pos).from));
}

// The places to type on are numbered, so that Tab goes on to the next, and last to the end.
function asSnippet(put: string): string {
  let place = 0;
  const whole = put.endsWith('\0') ? put : `${put}\0`;
  return whole.replace(/[$\\]/gu, '\\$&').replaceAll('\0', () => `\${${++place}}`);
}
