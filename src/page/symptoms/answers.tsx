import type { TestQuestion } from '../../asking/faults/index.ts';
import { type TestOutcome, sightOf } from '../../engine/sight/index.ts';
import { saidText } from '../../engine/suspects/index.ts';
import { causeText, outcomeText, type Voice } from '../../telling/narrative/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

interface Props {
  readonly question: TestQuestion;
  readonly give: (saw: string) => void;
}

/** What a test may show, a large button each: what it should, then the likeliest. */
export function Answers({ question, give }: Props) {
  const say = words();
  const voice = voiceNow();
  const { outcomes, whole, parts, test } = question;
  const places = new Map(parts.map(({ outcome }, k) => [outcome, k]));
  const order = outcomes
    .map((outcome, o) => ({ outcome, o }))
    .toSorted((a, b) => rank(a) - rank(b));
  function rank({ outcome, o }: { readonly outcome: TestOutcome; readonly o: number }): number {
    return o === whole ? -1 : (placeOf(outcome) ?? outcomes.length + o);
  }
  function placeOf(outcome: TestOutcome): number | undefined {
    return places.get(outcome);
  }
  return (
    <ul class="symptoms-answers">
      {order.map(({ outcome, o }) => {
        const part = parts[placeOf(outcome) ?? -1];
        const text = outcomeText(outcome, voice);
        return (
          <li key={o}>
            <button
              type="button"
              class="large symptoms-answer"
              onClick={() => give(sawOf(outcome, o === question.own, test.test))}
            >
              <span class="symptoms-outcome">
                {text}
                {o === whole && <small> {say.asItShould}</small>}
              </span>
              <small class="symptoms-leaves">
                {part && say.leaves(part.suspects.length, named(part.suspects, voice, say.more))}
              </small>
            </button>
          </li>
        );
      })}
    </ul>
  );
}

// In the words that a person would type: a gear at its own ratio drives, or brakes.
function sawOf(outcome: TestOutcome, own: boolean, test: string): string {
  if (own) return test === 'coast' ? 'brakes' : 'drives';
  return saidText({ sight: sightOf(outcome), sure: 'sure' });
}

type Causes = TestQuestion['parts'][number]['suspects'];

function named(suspects: Causes, voice: Voice, more: (count: number) => string): string {
  const names = suspects.slice(0, MOST).map((cause) => causeText(cause, voice));
  const rest = suspects.length - names.length;
  return names.join(', ') + (rest > 0 ? more(rest) : '');
}

const MOST = 2;
