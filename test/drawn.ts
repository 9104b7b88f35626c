import type { StickDiagram } from '../src/telling/stickdiagram/index.ts';
import type { Mark, Scene } from '../src/telling/scene/index.ts';
import { widthOf } from '../src/telling/scene/lettering.ts';

/** A rectangle on a sheet. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
  readonly says: string;
}

/** What a scene has on its sheet: words by the room that they take, marks by their bounds. */
export function boxesOf(scene: Scene): { readonly words: Box[]; readonly marks: Box[] } {
  const words: Box[] = [];
  const marks: Box[] = [];
  const visit = (mark: Mark, x: number, y: number): void => {
    switch (mark.mark) {
      case 'words': {
        if (mark.text === '') return;
        const room = widthOf(mark.text, mark.size);
        const left = x + mark.x - { start: 0, middle: room / 2, end: room }[mark.anchor];
        // Capitals reach up 0.73 of the size and tails down 0.21 of it.
        const top = y + mark.y - 0.73 * mark.size;
        const foot = y + mark.y + 0.21 * mark.size;
        words.push({ left, right: left + room, top, foot, says: mark.text });
        return;
      }
      case 'path':
        for (const box of boundsOf(mark.d)) {
          const { left, right, top, foot } = box;
          marks.push({
            left: x + left,
            right: x + right,
            top: y + top,
            foot: y + foot,
            says: mark.d,
          });
        }
        return;
      case 'group':
        for (const inner of mark.marks) visit(inner, x + (mark.at?.x ?? 0), y + (mark.at?.y ?? 0));
    }
  };
  for (const mark of scene.marks) visit(mark, 0, 0);
  return { words, marks };
}

/** Whether two boxes have more than a hair in common. */
export function meet(a: Box, b: Box): boolean {
  const hair = 0.5;
  return (
    a.left < b.right - hair &&
    b.left < a.right - hair &&
    a.top < b.foot - hair &&
    b.top < a.foot - hair
  );
}

// The bounds of each part of a path; of an arc, those of its whole circle.
function boundsOf(d: string): Omit<Box, 'says'>[] {
  const boxes: Omit<Box, 'says'>[] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  const line = (toX: number, toY: number) => {
    boxes.push({
      left: Math.min(x, toX),
      right: Math.max(x, toX),
      top: Math.min(y, toY),
      foot: Math.max(y, toY),
    });
    [x, y] = [toX, toY];
  };
  for (const [, letter = '', rest = ''] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const numbers = [...rest.matchAll(/-?\d*\.?\d+/g)].map(Number);
    const [a = 0, b = 0] = numbers;
    const [fromX, fromY] = letter === letter.toLowerCase() ? [x, y] : [0, 0];
    switch (letter.toLowerCase()) {
      case 'm':
        [x, y, startX, startY] = [fromX + a, fromY + b, fromX + a, fromY + b];
        break;
      case 'l':
        for (let k = 0; k < numbers.length; k += 2) {
          const [ownX, ownY] = letter === 'l' ? [x, y] : [0, 0];
          line(ownX + (numbers[k] ?? 0), ownY + (numbers[k + 1] ?? 0));
        }
        break;
      case 'h':
        line(fromX + a, y);
        break;
      case 'v':
        line(x, fromY + a);
        break;
      case 'a':
        for (let k = 0; k < numbers.length; k += 7) {
          const [ownX, ownY] = letter === 'a' ? [x, y] : [0, 0];
          const to = [ownX + (numbers[k + 5] ?? 0), ownY + (numbers[k + 6] ?? 0)] as const;
          const [radius = 0, , , large = 0, sweep = 0] = numbers.slice(k, k + 7);
          boxes.push(circleOf([x, y], to, radius, large !== sweep));
          [x, y] = to;
        }
        break;
      case 'z':
        line(startX, startY);
        break;
      default:
        throw new Error(`a path with ${letter}: ${d}`);
    }
  }
  return boxes;
}

// The circle through two points: its centre lies to the left of the way from one to the other, or
// to the right.
function circleOf(
  [x, y]: readonly [number, number],
  [toX, toY]: readonly [number, number],
  radius: number,
  left: boolean,
): Omit<Box, 'says'> {
  const half = Math.hypot(toX - x, toY - y) / 2;
  const off = (Math.sqrt(Math.max(0, radius ** 2 - half ** 2)) / (2 * half)) * (left ? 1 : -1);
  const centreX = (x + toX) / 2 - off * (toY - y);
  const centreY = (y + toY) / 2 + off * (toX - x);
  return {
    left: centreX - radius,
    right: centreX + radius,
    top: centreY - radius,
    foot: centreY + radius,
  };
}

/** A straight line of a body. */
export interface Stroke {
  readonly member: string;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Every straight line of the bodies, from left to right or from the top down. */
export function strokesOf({ lines }: StickDiagram): Stroke[] {
  return lines.flatMap(({ member, shaft, drum, branches, disc }) => {
    const trunks = [shaft, drum].flatMap((piece) => (piece ? [piece] : []));
    const others = [...branches, ...(disc ? [disc] : [])].flatMap(({ pieces }) => pieces);
    return [...trunks, ...others].map(({ x1, x2, y1, y2 }) => ({
      member,
      x1: Math.min(x1, x2),
      x2: Math.max(x1, x2),
      y1: Math.min(y1, y2),
      y2: Math.max(y1, y2),
    }));
  });
}

/** Whether two lines run along each other. */
export function runTogether(a: Stroke, b: Stroke): boolean {
  const flat = a.y1 === a.y2 && b.y1 === b.y2 && Math.abs(a.y1 - b.y1) < 2;
  const steep = a.x1 === a.x2 && b.x1 === b.x2 && Math.abs(a.x1 - b.x1) < 2;
  if (flat && a.x1 < a.x2 && b.x1 < b.x2) return a.x1 < b.x2 - 0.5 && b.x1 < a.x2 - 0.5;
  if (steep && a.y1 < a.y2 && b.y1 < b.y2) return a.y1 < b.y2 - 0.5 && b.y1 < a.y2 - 0.5;
  return false;
}

/** Whether one line passes across the other. */
export function cross(a: Stroke, b: Stroke): boolean {
  const across = (flat: Stroke, steep: Stroke) =>
    flat.y1 === flat.y2 &&
    steep.x1 === steep.x2 &&
    flat.x1 < steep.x1 - 0.01 &&
    flat.x2 > steep.x1 + 0.01 &&
    steep.y1 < flat.y1 - 0.01 &&
    steep.y2 > flat.y1 + 0.01;
  return across(a, b) || across(b, a);
}

/** Whether all lines hang together. */
export function hangTogether(strokes: readonly Stroke[]): boolean {
  const [first, ...rest] = strokes;
  if (!first) return true;
  const reached = [first];
  let left = rest;
  for (let before = -1; before !== left.length;) {
    before = left.length;
    const touches = (a: Stroke) =>
      reached.some((b) => {
        const apart =
          a.x1 > b.x2 + 0.1 || b.x1 > a.x2 + 0.1 || a.y1 > b.y2 + 0.1 || b.y1 > a.y2 + 0.1;
        return !apart;
      });
    const near = left.filter(touches);
    reached.push(...near);
    left = left.filter((stroke) => !near.includes(stroke));
  }
  return left.length === 0;
}
