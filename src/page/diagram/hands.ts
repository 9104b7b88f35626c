import type { SceneSubject } from '../../telling/scene/index.ts';
import type { Study } from '../study/index.ts';

/**
 * Hands on the diagram: a dial that is dragged round turns its member, one that is tapped is held
 * or released; a device that is tapped is applied or released, a one-way clutch looked into. The
 * same by keys: the arrows turn, Enter and the space bar hold. The returned function takes the hands away.
 */
export function hearHands(svg: SVGSVGElement, study: Study): () => void {
  let drag: Drag | undefined;
  const listeners: [keyof SVGElementEventMap, (event: never) => void][] = [
    [
      'pointerdown',
      (event: PointerEvent) => {
        const dial = (event.target as Element).closest('.handle');
        if (!dial || event.button !== 0) return;
        event.preventDefault();
        drag = dragOf(dial, event);
        svg.setPointerCapture(event.pointerId);
        dial.querySelector<SVGElement>('.dial')?.focus();
      },
    ],
    [
      'pointermove',
      (event: PointerEvent) => {
        if (!drag) return void point(study, event.target as Element);
        const angle = angleOf(drag, event);
        const degrees = ((angle - drag.angle + 540) % 360) - 180;
        if (!drag.moved && Math.abs(degrees) < 4) return undefined;
        if (!drag.moved && study.turned.value !== drag.member) study.grab(drag.member);
        drag = { ...drag, angle, moved: true };
        study.turnBy(degrees);
        return undefined;
      },
    ],
    [
      'pointerup',
      (event: PointerEvent) => {
        const { moved = true, member = '' } = drag ?? {};
        const tapped = !drag && (event.target as Element).closest('.device');
        drag = undefined;
        if (!moved) study.lay(member);
        if (tapped) touch(study, tapped);
      },
    ],
    ['pointercancel', () => (drag = undefined)],
    ['pointerleave', () => (study.pointed.value = undefined)],
    ['focusin', (event: FocusEvent) => point(study, event.target as Element)],
    ['keydown', (event: KeyboardEvent) => press(study, event)],
  ];
  for (const [name, hear] of listeners) svg.addEventListener(name, hear as EventListener);
  return () => {
    for (const [name, hear] of listeners) svg.removeEventListener(name, hear as EventListener);
  };
}

interface Drag {
  readonly member: string;
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  readonly moved: boolean;
}

function dragOf(dial: Element, event: PointerEvent): Drag {
  const rim = dial.querySelector('.dial-rim')?.getBoundingClientRect() ?? new DOMRect();
  const centre = { x: rim.x + rim.width / 2, y: rim.y + rim.height / 2 };
  const member = dial.getAttribute('data-name') ?? '';
  return { member, ...centre, angle: angleOf(centre, event), moved: false };
}

function angleOf({ x, y }: { x: number; y: number }, { clientX, clientY }: PointerEvent): number {
  return (Math.atan2(clientY - y, clientX - x) * 180) / Math.PI;
}

function touch(study: Study, device: Element): void {
  const name = device.getAttribute('data-name') ?? '';
  if (device.querySelector('.one-way')) study.lookInto(name);
  else study.toggle(name);
}

function press(study: Study, event: KeyboardEvent): void {
  const oneWay = (event.target as Element).closest('.device');
  if (oneWay && (event.key === 'Enter' || event.key === ' ')) {
    touch(study, oneWay);
    event.preventDefault();
    return;
  }
  const member = (event.target as Element).closest('.handle')?.getAttribute('data-name');
  if (member === undefined || member === null) return;
  const degrees = { ArrowRight: 5, ArrowUp: 5, ArrowLeft: -5, ArrowDown: -5 }[event.key];
  if (degrees !== undefined) {
    if (study.turned.value !== member) study.grab(member);
    study.turnBy(degrees);
  } else if (event.key === 'Enter' || event.key === ' ') study.lay(member);
  else return;
  event.preventDefault();
}

function point(study: Study, target: Element): void {
  const about = target.closest('[data-kind]');
  const kind = about?.getAttribute('data-kind') as SceneSubject['kind'] | undefined;
  const name = about?.getAttribute('data-name') ?? '';
  const before = study.pointed.value;
  if (!kind) study.pointed.value = undefined;
  else if (before?.kind !== kind || before.name !== name) study.pointed.value = { kind, name };
}
