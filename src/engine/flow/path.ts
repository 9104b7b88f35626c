import type { MemberName } from '../train/index.ts';
import { type Element, flowTo, onCase, type Touch } from './element.ts';

/** An element of the load's path, and the body from which the load came to it. */
export interface PathStage {
  readonly element: Element;
  readonly from: MemberName;
}

/**
 * The loaded elements in the order in which the load travels from some bodies: those that pass
 * power on first, each once all that drives it has been told; then what only takes reactions;
 * what hands them to the case last.
 */
export function pathOf(elements: readonly Element[], start: readonly MemberName[]): PathStage[] {
  const reached: MemberName[] = [...start];
  const path: PathStage[] = [];
  const left = [...elements];
  while (left.length > 0) {
    const ranked = left.map((element) => ({ element, rank: rankOf(element, reached) }));
    const first = ranked.reduce((best, next) => (isBefore(next.rank, best.rank) ? next : best));
    const { element } = first;
    left.splice(left.indexOf(element), 1);
    const from = reached.find((body) => element.touches.some((touch) => touch.body === body));
    path.push({ element, from: from ?? (element.touches[0] as Touch).body });
    for (const touch of element.touches) {
      if (!onCase(touch) && !reached.includes(touch.body)) reached.push(touch.body);
    }
  }
  return path;
}

// Smaller ranks come first, compared number by number.
function rankOf({ touches }: Element, reached: readonly MemberName[]): number[] {
  const places = touches.map(({ body }) => reached.indexOf(body)).filter((place) => place >= 0);
  const givers = touches.filter((touch) => flowTo(touch) < 0);
  const waits = givers.some(({ body }) => !reached.includes(body));
  const passes = givers.length > 0;
  const toCase = touches.filter((touch) => !onCase(touch)).length === 1 && touches.some(onCase);
  const unreached = places.length === 0;
  return [
    unreached ? 1 : 0,
    passes && !waits ? 0 : toCase ? 3 : passes ? 2 : 1,
    Math.min(...places, reached.length),
  ];
}

function isBefore(a: readonly number[], b: readonly number[]): boolean {
  const k = a.findIndex((rank, at) => rank !== b[at]);
  return k >= 0 && (a[k] as number) < (b[k] as number);
}
