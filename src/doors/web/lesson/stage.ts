import { batch } from '@preact/signals';
import { faultText } from '../../../engine/faults/index.ts';
import type { Question } from '../../../shop/lessons/index.ts';
import type { Bench } from '../bench/index.ts';
import { isCalm } from '../calm.ts';

/** Puts the train into the state that a question is about, and sets it moving. */
export function stage(bench: Bench, { setting }: Question): void {
  const { on, end, hold, turn, fault } = setting;
  batch(() => {
    bench.spoil(fault ? [faultText(fault)] : []);
    if (!turn) {
      bench.run(on, end === 'coast' ? 'coast' : 'drive');
      bench.turning.runs.value = !isCalm();
      return;
    }
    bench.on.value = on;
    bench.held.value = new Set(hold);
    bench.grab(turn.member, turn.way);
  });
  const way = turn?.way === 'clockwise' ? 1 : -1;
  if (turn && isCalm()) bench.turnBy(way * SWING);
  else if (turn) swing(bench, way, SWING);
}

// The hand turns a third of a turn.
const SWING = 120;

// A degree a frame.
function swing(bench: Bench, way: 1 | -1, degrees: number): void {
  const { turned } = bench;
  const member = turned.value;
  if (degrees <= 0) return;
  requestAnimationFrame(() => {
    if (turned.value !== member) return;
    bench.turnBy(way);
    swing(bench, way, degrees - 1);
  });
}
