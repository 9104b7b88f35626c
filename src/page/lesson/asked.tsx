import type { Signal } from '@preact/signals';
import { again, reveal, type Round, tally, unvote, vote } from '../../shop/lessons/index.ts';
import {
  choiceText,
  misconceptionText,
  questionText,
  sentences,
} from '../../telling/narrative/index.ts';
import { language, stand } from '../words/index.ts';
import { words } from './words.ts';

const LETTERS = 'ABCDE';

/** The question and its choices; a tap on one is a vote. Revealed, each is met by its reason. */
export function Asked({ round }: { readonly round: Signal<Round | undefined> }) {
  const say = words();
  const now = round.value;
  if (!now) return null;
  const { question, stage } = now;
  const revealed = stage === 'revealed';
  const { total, choices } = tally(now);
  return (
    <section class="lesson-asked">
      <h2 class="lesson-question">{questionText(question, language.value, stand.value)}</h2>
      <ol class="lesson-choices">
        {question.choices.map((choice, k) => {
          const { votes, share, change } = choices[k] ?? { votes: 0, share: 0 };
          return (
            <li key={k} class={revealed ? (choice.right ? 'lesson-right' : 'lesson-wrong') : ''}>
              <button
                type="button"
                class="lesson-choice"
                disabled={revealed}
                onClick={() => (round.value = vote(now, k))}
              >
                <span class="lesson-letter">{LETTERS[k]}</span>
                <span>
                  {choiceText(choice.answer, language.value, stand.value)}
                  {revealed && choice.right && <b> {say.right}</b>}
                </span>
                <output aria-label={say.votes(votes)}>
                  {votes}
                  {change !== undefined && change !== 0 && (
                    <small>
                      {' '}
                      ({change > 0 ? '+' : '−'}
                      {Math.abs(change)})
                    </small>
                  )}
                </output>
              </button>
              <button
                type="button"
                class="lesson-less"
                aria-label={`${say.less}: ${LETTERS[k]}`}
                disabled={revealed || votes === 0}
                onClick={() => (round.value = unvote(now, k))}
              >
                −
              </button>
              <meter class="lesson-share" min="0" max="1" value={share} aria-label={say.share} />
              {revealed && !choice.right && (
                <p class="lesson-reason">
                  {misconceptionText(choice.misconception, language.value)}
                </p>
              )}
              {revealed && choice.right && question.setting.fault && (
                <p class="lesson-reason">
                  {sentences(question.facts, language.value, stand.value).join(' ')}
                </p>
              )}
            </li>
          );
        })}
      </ol>
      <div class="gears-row">
        {!revealed && (
          <button type="button" onClick={() => (round.value = reveal(now))}>
            {say.reveal}
          </button>
        )}
        {total > 0 && (
          <button type="button" onClick={() => (round.value = again(now))}>
            {say.again}
          </button>
        )}
        <span class="aside">{say.total(total)}</span>
      </div>
    </section>
  );
}
