import { judge } from '../reckon/index.ts';
import { type Motion, motionOf } from '../motion/index.ts';
import { ONE, opposite, ZERO } from '../linear/index.ts';
import type { MemberName, Train } from '../train/index.ts';
import type { HandCheck } from './answer.ts';

/**
 * The checks that hands can do on a train with nothing applied: hold none of its bodies or up
 * to `most`, turn another, either way. Bodies go by their labels; planets and the case are not
 * for hands. The fewest hands first.
 */
export function handChecks(train: Train, most = 1): HandCheck[] {
  const { bodies, onPins } = motionOf(train).assembly;
  const labels = bodies.flatMap(({ label }, body) =>
    body === 0 || onPins.has(body) ? [] : [label],
  );
  return holds(labels, most).flatMap((hold) =>
    labels
      .filter((turn) => !hold.includes(turn))
      .flatMap((turn) =>
        (['clockwise', 'anticlockwise'] as const).map((way): HandCheck => {
          return { hold, turn, way, on: [] };
        }),
      ),
  );
}

/** Whether the member turns: the ruling of `hand`, proved, without the moves of the others. */
export function turns(motion: Motion, { hold, turn, way, on }: HandCheck): boolean {
  const turned = { member: turn, speed: way === 'clockwise' ? ONE : opposite(ONE) };
  const held = hold.map((member) => ({ member, speed: ZERO }));
  return judge(motion, { on: new Set(on), given: [turned, ...held] }).turns;
}

// Every choice of at most `most` labels, the smaller first.
function holds(labels: readonly MemberName[], most: number): MemberName[][] {
  let choices: MemberName[][] = [[]];
  const all = [...choices];
  for (let size = 1; size <= most; size++) {
    choices = choices.flatMap((choice) => {
      const after = labels.indexOf(choice.at(-1) ?? '') + 1;
      return labels.slice(after).map((label) => [...choice, label]);
    });
    all.push(...choices);
  }
  return all;
}
