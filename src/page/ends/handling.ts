import type { EndView } from '../../telling/endview/index.ts';
import type { Build, Study } from '../study/index.ts';

/**
 * A wheel that is dragged round turns its member, as its dial does; a planet takes its carrier
 * along, and the case is not for hands. The returned function ends it.
 */
export function hearDrags(
  svg: SVGSVGElement,
  study: Study,
  build: Build,
  view: EndView,
): () => void {
  let drag: { readonly member: string; readonly centre: DOMPoint; angle: number } | undefined;
  const side = view.seenFrom === 'input' ? 1 : -1;
  const angleAt = ({ x, y }: DOMPoint, { clientX, clientY }: PointerEvent) =>
    (Math.atan2(clientY - y, clientX - x) * 180) / Math.PI;
  const down = (event: PointerEvent) => {
    const wheels = [...svg.querySelectorAll('.end-wheel')];
    const part = (event.target as Element).closest('.end-wheel, .end-carrier');
    const screen = svg.getScreenCTM();
    if (!part || !screen || event.button !== 0) return;
    const wheel = view.wheels[wheels.indexOf(part)];
    const onPin = wheel && wheel.pin.radius > 0 && wheel.orbitsWith === view.carrier?.member;
    const member = !wheel || onPin ? view.carrier?.label : wheel.label;
    const body = member === undefined ? 0 : (build.assembly.value?.bodyOf(member) ?? 0);
    if (member === undefined || body === 0) return;
    event.preventDefault();
    // A wheel of a pair turns about its own centre; all else about the axis.
    const own = wheel?.kind === 'wheel' ? part.getBoundingClientRect() : undefined;
    const centre = own
      ? new DOMPoint(own.x + own.width / 2, own.y + own.height / 2)
      : new DOMPoint(view.axis.x, view.axis.y).matrixTransform(screen);
    drag = { member, centre, angle: angleAt(centre, event) };
    svg.setPointerCapture(event.pointerId);
  };
  const move = (event: PointerEvent) => {
    if (!drag) return;
    const angle = angleAt(drag.centre, event);
    const degrees = ((angle - drag.angle + 540) % 360) - 180;
    if (study.turned.value !== drag.member) {
      if (Math.abs(degrees) < 3) return;
      study.grab(drag.member);
    }
    drag.angle = angle;
    study.turnBy(side * degrees);
  };
  const up = () => (drag = undefined);
  svg.addEventListener('pointerdown', down);
  svg.addEventListener('pointermove', move);
  svg.addEventListener('pointerup', up);
  svg.addEventListener('pointercancel', up);
  return () => {
    svg.removeEventListener('pointerdown', down);
    svg.removeEventListener('pointermove', move);
    svg.removeEventListener('pointerup', up);
    svg.removeEventListener('pointercancel', up);
  };
}
