import { useSignal, useSignalEffect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { again, reveal, unvote, vote } from '../../shop/lessons/index.ts';
import type { Study } from '../study/index.ts';
import { Builds } from '../fault/index.ts';
import { fillWith } from '../figure/index.ts';
import { Asked } from './asked.tsx';
import { HiddenAnswer } from './hidden.tsx';
import { type Asked as Questions, askInTurn } from './inturn.ts';
import { leave, useKeys } from './keys.ts';
import { Sitting } from './sitting.ts';
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
  const sitting = Sitting.of(study.file.train.value?.name ?? '');
  const known = useSignal<Questions>({ questions: [], complete: false });
  useSignalEffect(() => {
    const train = study.file.train.value;
    known.value = { questions: [], complete: !train };
    if (!train) return undefined;
    const { seed } = Sitting.of(train.name);
    return askInTurn(train, seed.value, (asked) => (known.value = asked));
  });
  // Read anew by every press: keys may come faster than the page is drawn.
  const now = () => {
    const { questions, complete } = known.value;
    // A file that was changed may leave fewer questions than the class had come to.
    const place = complete && !questions[sitting.place.value] ? 0 : sitting.place.value;
    // It stays the same while others come after it, and so do its votes.
    const question = questions[place];
    const round = question && sitting.roundOf(question);
    return { place, question, round, count: questions.length, complete };
  };
  const { place, question, round, count, complete } = now();
  const revealed = round?.stage === 'revealed' ? question : undefined;
  useEffect(() => {
    if (revealed) stage(study, revealed);
  }, [study, revealed]);
  // What was staged for a question goes with it.
  useEffect(() => () => unstage(study), [study, question]);
  const go = (by: number) => {
    const { place: from, count: all } = now();
    if (all > 0) sitting.go((from + by + all) % all);
  };
  const presses = {
    vote(choice: number, by: 1 | -1) {
      const { round: its } = now();
      if (its) sitting.keep((by > 0 ? vote : unvote)(its, choice));
    },
    reveal() {
      const { round: its } = now();
      if (its) sitting.keep(reveal(its));
    },
    go,
  };
  useKeys(presses);
  if (!round) return <p>{complete && say.none}</p>;
  return (
    <div class="lesson" ref={sheet}>
      <div class="gears-row page-controls">
        <button
          type="button"
          onClick={(event) => {
            go(-1);
            leave(event);
          }}
        >
          {say.before}
        </button>
        <span>{say.place(place + 1, count)}</span>
        <button
          type="button"
          onClick={(event) => {
            go(1);
            leave(event);
          }}
        >
          {say.next}
        </button>
        <SetBox sitting={sitting} />
        {document.fullscreenEnabled && (
          <button
            type="button"
            onClick={(event) => {
              void fillWith(sheet.current);
              leave(event);
            }}
          >
            {say.large}
          </button>
        )}
      </div>
      <Asked round={round} presses={presses} again={() => sitting.keep(again(round))} />
      {revealed ? (
        <Builds study={study} />
      ) : (
        <HiddenAnswer study={study} question={round.question} />
      )}
    </div>
  );
}

// Of its own, so that the questions that come in take nothing from who is typing in it.
function SetBox({ sitting }: { readonly sitting: Sitting }) {
  const say = words();
  return (
    <label>
      {say.seed}{' '}
      <input
        type="number"
        min="1"
        max="99999"
        value={sitting.seed.value}
        onChange={({ currentTarget }) => {
          sitting.begin(Math.max(1, Math.round(Number(currentTarget.value)) || 1));
        }}
      />
    </label>
  );
}
