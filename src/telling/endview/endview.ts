import type { MemberName, Train } from '../../engine/train/index.ts';
import { bevelView } from './bevelview.ts';
import type { EndWheel } from './endwheel.ts';
import type { EndView } from './view.ts';
import { pairView } from './pairview.ts';
import { setView } from './setview.ts';

/**
 * The end view of a set or a gear pair by its name; undefined for another name. Of a bevel set
 * it is a scheme: see `bevelView`. Seen from the output end it is the mirror image, so that
 * clockwise speeds look anticlockwise.
 */
export function endView(
  train: Train,
  name: string,
  seenFrom: 'input' | 'output' = 'input',
): EndView | undefined {
  const set = train.sets.find((other) => other.name === name);
  if (set?.kind === 'bevel') return bevelView(train, set, seenFrom);
  if (set) return setView(train, set, seenFrom);
  const pair = train.pairs.find((other) => other.name === name);
  return pair && pairView(train, pair, seenFrom);
}

/**
 * Where each wheel of a view is: x, y and degrees clockwise, three numbers a wheel, in the
 * order of the view's wheels. Angles are degrees clockwise seen from the input end, by member
 * name; a member without one has not turned. Give the array that it gave before to have it
 * written over: a frame then allocates nothing.
 */
export function placeWheels(
  { wheels, axis, seenFrom }: EndView,
  angles: ReadonlyMap<MemberName, number>,
  places: Float64Array = new Float64Array(3 * wheels.length),
): Float64Array {
  const side = seenFrom === 'input' ? 1 : -1;
  for (let k = 0; k < wheels.length; k++) {
    const { pin, phase, orbitsWith, turnsWith, per } = wheels[k] as EndWheel;
    const carried = angles.get(orbitsWith) ?? 0;
    const turned = carried + per * ((angles.get(turnsWith) ?? 0) - carried);
    const round = ((pin.degrees + carried) * Math.PI) / 180;
    places[3 * k] = axis.x + side * pin.radius * Math.sin(round);
    places[3 * k + 1] = axis.y - pin.radius * Math.cos(round);
    places[3 * k + 2] = side * ((phase + turned) % 360);
  }
  return places;
}
