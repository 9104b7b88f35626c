import { useComputed, useSignal, useSignalEffect } from '@preact/signals';
import { questionsOf, roundOf } from '../../../shop/lessons/index.ts';
import type { Bench } from '../bench/index.ts';
import { Builds } from '../builds.tsx';
import { Asked } from './asked.tsx';
import { HiddenAnswer } from './hidden.tsx';
import { stage } from './stage.ts';
import { words } from './words.ts';
import './lesson.css';

/**
 * Predict, then reveal: a question about the train on the bench in big type, votes by a tap a
 * hand, and then the train moves and explains. Until then nothing on the sheet tells.
 */
export function Lesson({ bench }: { readonly bench: Bench }) {
  const say = words();
  const seed = useSignal(1);
  const place = useSignal(0);
  const questions = useComputed(() => {
    const train = bench.file.train.value;
    return train ? questionsOf(train, { seed: seed.value }) : [];
  });
  const question = questions.value[place.value];
  const round = useSignal(question && roundOf(question));
  useSignalEffect(() => {
    const asked = questions.value[place.value];
    round.value = asked && roundOf(asked);
  });
  useSignalEffect(() => {
    if (round.value?.stage === 'revealed') stage(bench, round.value.question);
  });
  const go = (by: number) => {
    place.value = (place.value + by + questions.value.length) % questions.value.length;
  };
  if (!round.value || !question) return <p>{say.none}</p>;
  return (
    <div class="lesson">
      <div class="gears-row page-controls">
        <button type="button" onClick={() => go(-1)}>
          {say.before}
        </button>
        <span>{say.place(place.value + 1, questions.value.length)}</span>
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
              place.value = 0;
            }}
          />
        </label>
      </div>
      <Asked round={round} />
      {round.value.stage === 'revealed' ? (
        <Builds bench={bench} />
      ) : (
        <HiddenAnswer bench={bench} question={round.value.question} />
      )}
    </div>
  );
}
