import { type EndView, placeWheels } from '../../telling/endview/index.ts';
import { placement } from '../../telling/scene/index.ts';
import type { Build } from '../study/index.ts';

/** A function that puts every wheel of a view on the screen where the build's angles have it. */
export function rollerOf(svg: Element, view: EndView, build: Build): () => void {
  const wheels = [...svg.querySelectorAll('.end-wheel')];
  const carrier = svg.querySelector('.end-carrier');
  const places = new Float64Array(3 * wheels.length);
  const side = view.seenFrom === 'input' ? 1 : -1;
  return () => {
    placeWheels(view, build.angles, places);
    wheels.forEach((wheel, k) => {
      const [x = 0, y = 0, degrees = 0] = places.subarray(3 * k, 3 * k + 3);
      wheel.setAttribute('transform', placement({ x, y, degrees }));
    });
    if (!carrier || !view.carrier) return;
    const degrees = side * ((build.angles.get(view.carrier.member) ?? 0) % 360);
    carrier.setAttribute('transform', placement({ ...view.axis, degrees }));
  };
}
