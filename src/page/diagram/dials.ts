import type { SceneSubject } from '../../telling/scene/index.ts';
import type { Study, Build } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import type { words } from './words.ts';

/** A dial of the diagram on the screen: its member, and the face that turns with it. */
export interface Dial {
  readonly member: string;
  readonly face: Element;
}

/** Makes each dial a thing that a keyboard reaches and a screen reader tells. */
export function dressDials(
  svg: Element,
  study: Study,
  build: Build,
  say: ReturnType<typeof words>,
): Dial[] {
  return [...svg.querySelectorAll('.handle')].flatMap((handle) => {
    const member = handle.getAttribute('data-name') ?? '';
    const held = study.held.value.has(member);
    const turned = study.turned.value === member;
    const dial = handle.querySelector('.dial');
    dial?.setAttribute('tabindex', '0');
    dial?.setAttribute('role', 'button');
    dial?.setAttribute('aria-pressed', String(held));
    dial?.setAttribute('aria-label', say.dial(member, build.answer.value?.speeds.get(member)));
    handle.classList.toggle('diagram-held', held);
    handle.classList.toggle('diagram-turned', turned);
    const face = handle.querySelector('.dial-face');
    return face ? [{ member, face }] : [];
  });
}

/** Makes each one-way clutch a thing to be looked into, by keys and for a screen reader too. */
export function dressOneWays(svg: Element, study: Study, say: ReturnType<typeof words>): void {
  for (const mark of svg.querySelectorAll('.device .one-way')) {
    const name = mark.closest('.device')?.getAttribute('data-name') ?? '';
    mark.setAttribute('tabindex', '0');
    mark.setAttribute('role', 'button');
    mark.setAttribute('aria-expanded', String(study.lookedInto.value === name));
    mark.setAttribute('aria-label', say.look(voiceNow().called(name)));
  }
}

/** Turns the faces by the angles of the build; the loop's whole work for the diagram. */
export function turnDials(dials: readonly Dial[], build: Build): void {
  for (const { member, face } of dials) {
    face.setAttribute('transform', `rotate(${(build.angles.get(member) ?? 0).toFixed(2)})`);
  }
}

/** Lights every mark that speaks of what is pointed at. */
export function lightPointed(svg: Element, pointed: SceneSubject | undefined): void {
  for (const mark of svg.querySelectorAll('[data-kind]')) {
    const lit =
      pointed !== undefined &&
      mark.getAttribute('data-kind') === pointed.kind &&
      mark.getAttribute('data-name') === pointed.name;
    mark.classList.toggle('diagram-lit', lit);
  }
}
