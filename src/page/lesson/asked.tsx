import { type Round, tally } from '../../shop/lessons/index.ts';
import {
  choiceText,
  misconceptionText,
  questionText,
  sentences,
} from '../../telling/narrative/index.ts';
import { stand, voiceNow } from '../words/index.ts';
import { leave, LETTERS, type Presses } from './keys.ts';
import { words } from './words.ts';

interface Props {
  readonly round: Round;
  readonly presses: Presses;
  readonly again: () => void;
}

/**
 * The question and its choices; a tap on one is a vote. Revealed, each is met by its reason, and
 * the shares are seen: before, nobody votes as most have voted.
 */
export function Asked({ round, presses, again }: Props) {
  const say = words();
  const { question, stage } = round;
  const revealed = stage === 'revealed';
  const { total, choices } = tally(round);
  return (
    <section class="lesson-asked">
      <h2 class="lesson-question">{questionText(question, voiceNow(), stand.value)}</h2>
      <ol class="lesson-choices">
        {question.choices.map((choice, k) => {
          const { votes, share, change } = choices[k] ?? { votes: 0, share: 0 };
          return (
            <li key={k} class={revealed ? (choice.right ? 'lesson-right' : 'lesson-wrong') : ''}>
              <button
                type="button"
                class="lesson-choice"
                disabled={revealed}
                onClick={(event) => {
                  presses.vote(k, 1);
                  leave(event);
                }}
              >
                <span class="lesson-letter">{LETTERS[k]}</span>
                <span>
                  {choiceText(choice.answer, voiceNow(), stand.value)}
                  {revealed && choice.right && <b> {say.right}</b>}
                </span>
                <output aria-label={say.votes(votes)}>
                  {votes}
                  {revealed && change !== undefined && change !== 0 && (
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
                onClick={(event) => {
                  presses.vote(k, -1);
                  leave(event);
                }}
              >
                −
              </button>
              {revealed && (
                <meter class="lesson-share" min="0" max="1" value={share} aria-label={say.share} />
              )}
              {revealed && !choice.right && (
                <p class="lesson-reason">{misconceptionText(choice.misconception, voiceNow())}</p>
              )}
              {revealed && choice.right && question.setting.fault && (
                <p class="lesson-reason">
                  {sentences(question.facts, voiceNow(), stand.value).join(' ')}
                </p>
              )}
            </li>
          );
        })}
      </ol>
      <div class="gears-row">
        {!revealed && (
          <button type="button" onClick={presses.reveal}>
            {say.reveal}
          </button>
        )}
        {(total > 0 || revealed) && (
          <button type="button" onClick={again}>
            {say.again}
          </button>
        )}
        <span class="aside">{say.total(total)}</span>
        <span class="aside lesson-keys">
          {say.keys(LETTERS[question.choices.length - 1] ?? '')}
        </span>
      </div>
    </section>
  );
}
