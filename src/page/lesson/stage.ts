import { batch } from '@preact/signals';
import { faultText } from '../../engine/faults/index.ts';
import type { Question } from '../../shop/lessons/index.ts';
import type { Study } from '../study/index.ts';
import { isCalm } from '../words/index.ts';

/** Puts the train into the state that a question is about, and sets it moving. */
export function stage(study: Study, { setting }: Question): void {
  const { on, end, hold, turn, fault } = setting;
  batch(() => {
    study.spoil(fault ? [faultText(fault)] : []);
    if (!turn) {
      study.run(on, end === 'coast' ? 'coast' : 'drive');
      study.turning.runs.value = !isCalm();
      return;
    }
    study.on.value = on;
    study.held.value = new Set(hold);
    study.grab(turn.member, turn.way);
  });
  const way = turn?.way === 'clockwise' ? 1 : -1;
  if (turn && isCalm()) study.turnBy(way * SWING);
  else if (turn) swing(study, way, SWING);
}

// The hand turns a third of a turn.
const SWING = 120;

// A degree a frame.
function swing(study: Study, way: 1 | -1, degrees: number): void {
  const { turned } = study;
  const member = turned.value;
  if (degrees <= 0) return;
  requestAnimationFrame(() => {
    if (turned.value !== member) return;
    study.turnBy(way);
    swing(study, way, degrees - 1);
  });
}

/** The wrong build and the hands of a question go when it is left. */
export function unstage(study: Study): void {
  batch(() => {
    study.spoil([]);
    study.release();
  });
}
