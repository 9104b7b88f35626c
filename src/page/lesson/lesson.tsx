import { useComputed, useSignal, useSignalEffect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { type Round, roundOf } from '../../shop/lessons/index.ts';
import type { Study } from '../study/index.ts';
import { Builds } from '../fault/index.ts';
import { fillWith } from '../figure/index.ts';
import { Asked } from './asked.tsx';
import { HiddenAnswer } from './hidden.tsx';
import { type Asked as Questions, askInTurn } from './inturn.ts';
import { stage, unstage } from './stage.ts';
import { words } from './words.ts';
import './lesson.css';

/**
 * Predict, then reveal: a question about the train that is studied in big type, votes by a tap a
 * hand, and then the train moves and explains. Until then nothing on the sheet tells.
 */
export function Lesson({ study }: { readonly study: Study }) {
  const say = words();
  const sheet = useRef<HTMLDivElement>(null);
  const seed = useSignal(1);
  const place = useSignal(0);
  const known = useSignal<Questions>({ questions: [], complete: false });
  useSignalEffect(() => {
    const train = study.file.train.value;
    place.value = 0;
    if (train) return askInTurn(train, seed.value, (asked) => (known.value = asked));
    known.value = { questions: [], complete: true };
    return undefined;
  });
  const { questions, complete } = known.value;
  // It stays the same while others come after it, and so do its votes.
  const question = useComputed(() => known.value.questions[place.value]);
  const round = useSignal<Round | undefined>(undefined);
  useSignalEffect(() => {
    round.value = question.value && roundOf(question.value);
  });
  useSignalEffect(() => {
    if (round.value?.stage === 'revealed') stage(study, round.value.question);
  });
  // What was staged for a question goes with it.
  useEffect(() => () => unstage(study), [question.value]);
  const go = (by: number) => {
    place.value = (place.value + by + questions.length) % questions.length;
  };
  if (!round.value) return <p>{complete && say.none}</p>;
  return (
    <div class="lesson" ref={sheet}>
      <div class="gears-row page-controls">
        <button type="button" onClick={() => go(-1)}>
          {say.before}
        </button>
        <span>{say.place(place.value + 1, questions.length)}</span>
        <button type="button" onClick={() => go(1)}>
          {say.next}
        </button>
        <label>
          {say.seed}{' '}
          <input
            type="number"
            min="1"
            max="99999"
            value={seed.value}
            onChange={({ currentTarget }) => {
              seed.value = Math.max(1, Math.round(Number(currentTarget.value)) || 1);
            }}
          />
        </label>
        {document.fullscreenEnabled && (
          <button type="button" onClick={() => void fillWith(sheet.current)}>
            {say.large}
          </button>
        )}
      </div>
      <Asked round={round} />
      {round.value.stage === 'revealed' ? (
        <Builds study={study} />
      ) : (
        <HiddenAnswer study={study} question={round.value.question} />
      )}
    </div>
  );
}
