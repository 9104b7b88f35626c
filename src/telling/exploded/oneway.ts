import type { Way } from '../../engine/train/index.ts';
import type { Model } from './model.ts';
import { ellipse, onCircle, pointText } from './solid.ts';

const COUNT = 14;
const [OUTER, INNER] = [50, 31];
const LONG = 16;

/**
 * A cage of sprags or rollers, seen from its left face. Each stands aslant: its inner end lies the
 * way in which the inner race may turn, for turned the other way it would stand up and jam.
 */
export function oneWay(model: Model, free: Way, rolls: boolean): Model {
  model.turn(0, { outer: OUTER, inner: INNER, long: LONG });
  const lean = free === 'clockwise' ? 11 : -11;
  const at = { x: 0, y: 0 };
  for (let k = 0; k < COUNT; k++) {
    const degrees = (360 * k) / COUNT;
    const corner = (radius: number, turn: number) =>
      pointText(onCircle(at, radius, degrees + turn));
    if (rolls) {
      const [x, y] = onCircle(at, (OUTER + INNER) / 2, degrees);
      model.mark('solid-mark', ellipse({ x, y }, 5));
      // The ramp of the cam: further from the axis where the roller is free.
      const ramp = `M${corner(OUTER - 4, -lean / 1.2)}L${corner(OUTER - 0.5, lean / 1.2)}`;
      model.mark('solid-line', ramp);
      continue;
    }
    const wide = 3.4;
    const d = [
      corner(OUTER - 1.5, -wide),
      corner(OUTER - 1.5, wide),
      corner(INNER + 1.5, lean + wide),
      corner(INNER + 1.5, lean - wide),
    ];
    model.mark('solid-mark', `M${d.join('L')}Z`);
  }
  return model;
}
