import type { ReadonlySignal, Signal } from '@preact/signals';
import { type Pull, pull, pulledTo, type Stop } from '../../engine/hand/index.ts';
import { ONE, toNumber } from '../../engine/linear/index.ts';
import { mostOf, type LeverDiagram, speedAt } from '../../telling/levers/index.ts';
import type { Study, Build } from '../study/index.ts';

/** A node that is being pulled, or was pulled and left where it is. */
export interface Hold {
  readonly member: string;
  readonly pull: Pull;
  readonly speed: number;
  readonly speeds: ReadonlyMap<string, number>;
  /** The speed at the top of the diagram: it stands while a hand pulls. */
  readonly most: number;
  /** What stops it where it is; absent while nothing does. */
  readonly stop?: Stop;
}

interface Ground {
  readonly study: Study;
  readonly build: Build;
  readonly diagram: ReadonlySignal<LeverDiagram | undefined>;
  readonly hold: Signal<Hold | undefined>;
}

/**
 * Pulls nodes by dragging them, or by the up and down arrows; Escape releases. The returned
 * function ends it.
 */
export function hearPulls(svg: SVGSVGElement, ground: Ground): () => void {
  let dragging = false;
  const nodeOf = (event: Event) => (event.target as Element).closest('.lever-node');
  const down = (event: PointerEvent) => {
    const member = nodeOf(event)?.getAttribute('data-name');
    if (member === undefined || member === null || event.button !== 0) return;
    event.preventDefault();
    dragging = lay(ground, member);
    if (dragging) svg.setPointerCapture(event.pointerId);
  };
  const move = (event: PointerEvent) => {
    const { diagram, hold } = ground;
    if (!dragging || !diagram.value || !hold.value) return;
    const box = svg.getBoundingClientRect();
    const height = ((event.clientY - box.top) / box.height) * diagram.value.height;
    const shown = { drawn: new Map(), speeds: new Map(), on: new Set<string>(), figure: String };
    drawTo(ground, speedAt(diagram.value, { ...shown, most: hold.value.most }, height));
  };
  const up = () => (dragging = false);
  const key = (event: KeyboardEvent) => {
    const member = nodeOf(event)?.getAttribute('data-name');
    if (member === undefined || member === null) return;
    const by = { ArrowUp: 0.1, ArrowDown: -0.1 }[event.key];
    if (event.key === 'Escape') ground.hold.value = undefined;
    else if (by === undefined) return;
    else if (ground.hold.value?.member === member || lay(ground, member)) {
      drawTo(ground, (ground.hold.value?.speed ?? 0) + by);
    }
    event.preventDefault();
  };
  svg.addEventListener('pointerdown', down);
  svg.addEventListener('pointermove', move);
  svg.addEventListener('pointerup', up);
  svg.addEventListener('pointercancel', up);
  svg.addEventListener('keydown', key);
  return () => {
    svg.removeEventListener('pointerdown', down);
    svg.removeEventListener('pointermove', move);
    svg.removeEventListener('pointerup', up);
    svg.removeEventListener('pointercancel', up);
    svg.removeEventListener('keydown', key);
  };
}

/** Makes each node a thing that a keyboard reaches and a screen reader tells. */
export function dressNodes(
  svg: Element,
  speeds: ReadonlyMap<string, number> | undefined,
  nameOf: (member: string) => string,
): void {
  for (const node of svg.querySelectorAll('.lever-node')) {
    const member = node.getAttribute('data-name') ?? '';
    const speed = (speeds?.get(member) ?? 0).toFixed(2);
    node.setAttribute('tabindex', '0');
    node.setAttribute('role', 'slider');
    node.setAttribute('aria-orientation', 'vertical');
    node.setAttribute('aria-label', nameOf(member));
    node.setAttribute('aria-valuenow', speed);
  }
}

// Lays a hand on a node; the input goes on turning once, unless it is what is pulled.
function lay({ study, build, diagram, hold }: Ground, member: string): boolean {
  const [train, assembly, answer] = [build.train.value, build.assembly.value, build.answer.value];
  if (!train || !assembly || !answer || !diagram.value) return false;
  const isInput = assembly.bodyOf(train.input) === assembly.bodyOf(member);
  const held = [...study.held.value].filter(
    (name) =>
      assembly.bodyOf(name) !== undefined && assembly.bodyOf(name) !== assembly.bodyOf(member),
  );
  const from = answer.working?.drawn;
  const laid = pull(train, {
    on: study.on.value,
    hold: held,
    given: isInput || !answer.working ? [] : [{ member: train.input, speed: ONE }],
    pull: member,
    ...(from && { from }),
  });
  if (!laid) return false;
  const speeds = new Map([...laid.from].map(([name, speed]) => [name, toNumber(speed)]));
  const shown = { drawn: speeds, speeds: new Map(), on: new Set<string>(), figure: String };
  const most = Math.max(2, mostOf(diagram.value, shown));
  hold.value = { member, pull: laid, speed: speeds.get(member) ?? 0, speeds, most };
  return true;
}

function drawTo({ hold }: Ground, to: number): void {
  const held = hold.value;
  if (!held) return;
  const speeds = pulledTo(held.pull, to);
  const speed = speeds.get(held.member) ?? 0;
  const { up, down } = held.pull;
  const way = to > speed + 1e-9 ? up : to < speed - 1e-9 ? down : undefined;
  const { member, pull: laid, most } = held;
  hold.value = { member, pull: laid, most, speed, speeds, ...(way?.stop && { stop: way.stop }) };
}
