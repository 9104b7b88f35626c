import { type Path, round } from '../scene/index.ts';

// Round parts stand on an axis that runs to the right; one looks at the faces that are turned to
// the left, a little from the side: circles become narrow ellipses, what faces left is seen whole,
// and of the outside the near half.

/** How narrow a circle is drawn. */
export const SQUASH = 0.34;

/** Where the middle of a left face is. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A turned part: its outside, its bore, and how long it is along the axis, in sheet units. */
export interface Turned {
  readonly outer: number;
  readonly inner?: number;
  readonly long: number;
  /** Teeth or lugs on the outside, and how high they stand. */
  readonly teeth?: Notches;
  /** Teeth or lugs in the bore, which stand inwards from `inner`. */
  readonly bored?: Notches;
  /** The bore ends at a wall. */
  readonly blind?: boolean;
  /** The look of its face; absent: plain. */
  readonly face?: string;
}

export interface Notches {
  readonly count: number;
  readonly high: number;
}

/** A point of a circle about a spot: 0° lies to the right, 90° at the foot; clockwise, as seen. */
export function onCircle(
  { x, y }: Spot,
  radius: number,
  degrees: number,
): readonly [number, number] {
  const turn = (degrees * Math.PI) / 180;
  return [x + SQUASH * radius * Math.cos(turn), y + radius * Math.sin(turn)];
}

/** A turned part, what is behind painted first. */
export function turned(at: Spot, its: Turned): Path[] {
  const { outer, inner = 0, long, teeth, bored, blind = false, face } = its;
  const back = { ...at, x: at.x + long };
  const foot = outer - (teeth?.high ?? 0);
  return [
    { mark: 'path', look: 'solid-side', d: rim(back, outer, teeth) },
    { mark: 'path', look: 'solid-side', d: sleeve(at, teeth ? foot : outer, long) },
    ...(teeth && long > 6 ? [lines(at, ridges(outer, teeth), long)] : []),
    { mark: 'path', look: `solid-face${face ? ` ${face}` : ''}`, d: rim(at, outer, teeth) },
    ...(inner > 0 ? boreOf(at, { inner, long, blind, ...(bored && { bored }) }) : []),
  ];
}

/** The edge of a face: a circle, or a wheel's teeth. */
function rim(at: Spot, radius: number, teeth?: Notches): string {
  if (!teeth) return ellipse(at, radius);
  const { count, high } = teeth;
  const step = 360 / count;
  const points: string[] = [];
  for (let k = 0; k < count; k++) {
    const from = k * step;
    const corners = [
      [radius - high, 0],
      [radius - high, 0.4],
      [radius, 0.55],
      [radius, 0.85],
    ] as const;
    for (const [r, part] of corners) points.push(pointText(onCircle(at, r, from + part * step)));
  }
  return `M${points.join('L')}Z`;
}

export function ellipse({ x, y }: Spot, radius: number): string {
  const arc = (side: 1 | -1) =>
    `A${round(SQUASH * radius)} ${round(radius)} 0 0 1 ${round(x)} ${round(y + side * radius)}`;
  return `M${round(x)} ${round(y - radius)}${arc(1)}${arc(-1)}Z`;
}

/** Short lines along the outside, from the front edge on, where it is seen. */
export function lines(at: Spot, places: Ridges, long: number): Path {
  const d = places.degrees
    .filter((degrees) => Math.cos((degrees * Math.PI) / 180) > 0.05)
    .map((degrees) => `M${pointText(onCircle(at, places.radius, degrees))}h${round(long)}`)
    .join('');
  return { mark: 'path', look: 'solid-line', d };
}

export interface Ridges {
  readonly radius: number;
  readonly degrees: readonly number[];
}

/** Where the edges of teeth are. */
function ridges(radius: number, { count }: Notches): Ridges {
  const step = 360 / count;
  return { radius, degrees: Array.from({ length: count }, (_, k) => (k + 0.7) * step) };
}

/** The outside between two faces, without the further edge's left half. */
function sleeve({ x, y }: Spot, radius: number, long: number): string {
  const [wide, high] = [round(SQUASH * radius), round(radius)];
  const end = round(x + long);
  return (
    `M${round(x)} ${round(y - radius)}A${wide} ${high} 0 0 0 ${round(x)} ${round(y + radius)}` +
    `H${end}A${wide} ${high} 0 0 0 ${end} ${round(y - radius)}Z`
  );
}

function boreOf(
  at: Spot,
  {
    inner,
    long,
    blind,
    bored,
  }: {
    readonly inner: number;
    readonly long: number;
    readonly blind: boolean;
    readonly bored?: Notches;
  },
): Path[] {
  const through = lens(at, inner, long, blind);
  return [
    // Teeth of a bore stand inwards: its rim is that of a wheel of its size.
    { mark: 'path', look: 'solid-bore', d: rim(at, inner, bored) },
    ...(bored && long > 6 ? [wallLines(at, inner, long, bored)] : []),
    ...(through ? [through] : []),
  ];
}

// What one sees at the other end of a bore: the wall it ends at, or the paper.
function lens(at: Spot, inner: number, long: number, blind: boolean): Path | undefined {
  const half = long / 2;
  const wide = SQUASH * inner;
  if (half >= wide * 0.97) return undefined;
  const high = inner * Math.sqrt(1 - (half / wide) ** 2);
  const [x, top, foot] = [round(at.x + half), round(at.y - high), round(at.y + high)];
  const radii = `${round(wide)} ${round(inner)}`;
  const d = `M${x} ${top}A${radii} 0 0 0 ${x} ${foot}A${radii} 0 0 0 ${x} ${top}Z`;
  return { mark: 'path', look: blind ? 'solid-face' : 'solid-through', d };
}

// Teeth along the far wall of a bore, as far as the near edge leaves them in sight.
function wallLines(at: Spot, inner: number, long: number, teeth: Notches): Path {
  const d = ridges(inner, teeth)
    .degrees.flatMap((degrees) => {
      const across = -2 * SQUASH * inner * Math.cos((degrees * Math.PI) / 180);
      if (across < 2) return [];
      const length = round(Math.min(long, across));
      return [`M${pointText(onCircle(at, inner, degrees))}h${length}`];
    })
    .join('');
  return { mark: 'path', look: 'solid-line', d };
}

export function pointText([x, y]: readonly [number, number]): string {
  return `${round(x)} ${round(y)}`;
}
