/** A closed line through points, x and y in turn. */
export type Polygon = Float64Array;

/**
 * The points of path data of our drawings (M, l, c, q, Z; the last closed figure of it), each
 * curve cut into `pieces`. Throws at what it does not know.
 */
export function polygonOf(d: string, pieces = 6): Polygon {
  const points: number[] = [];
  let [x, y] = [0, 0];
  let closed = false;
  for (const [, command = '', rest = ''] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/gu)) {
    const n = [...rest.matchAll(/-?(?:\d+\.?\d*|\.\d+)/gu)].map(([text]) => Number(text));
    const [a = 0, b = 0, e = 0, f = 0, g = 0, h = 0] = n;
    const at = [x, y] as const;
    switch (command) {
      case 'M':
        points.length = 0;
        [x, y] = [a, b];
        points.push(x, y);
        break;
      case 'l':
        [x, y] = [x + a, y + b];
        points.push(x, y);
        break;
      case 'q':
        for (let k = 1; k <= pieces; k++) {
          const t = k / pieces;
          const [p, q] = [2 * t * (1 - t), t * t];
          points.push(at[0] + p * a + q * e, at[1] + p * b + q * f);
        }
        [x, y] = [x + e, y + f];
        break;
      case 'c':
        for (let k = 1; k <= pieces; k++) {
          const t = k / pieces;
          const [p, q, r] = [3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
          points.push(at[0] + p * a + q * e + r * g, at[1] + p * b + q * f + r * h);
        }
        [x, y] = [x + g, y + h];
        break;
      case 'Z':
        closed = true;
        break;
      default:
        throw new Error(`no outline has the command ${command}`);
    }
  }
  if (!closed) throw new Error('the outline is not closed');
  return Float64Array.from(points);
}

/** An outline where a wheel stands; its metal is within it, or, of a ring, without. */
export interface Standing {
  readonly x: number;
  readonly y: number;
  readonly polygon: Polygon;
  readonly ring: boolean;
  /** Its least and its greatest radius. */
  readonly from: number;
  readonly to: number;
  /** The steps of the outline by heights; each by the place of its first point. */
  readonly bands: readonly (readonly number[])[];
}

/** A wheel's outline turned clockwise by degrees about its centre, which is moved. */
export function standing(
  outline: Polygon,
  ring: boolean,
  x: number,
  y: number,
  degrees: number,
): Standing {
  const [sin, cos] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
  const polygon = new Float64Array(outline.length);
  let [from, to] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 0; i < polygon.length; i += 2) {
    const [px, py] = [outline[i] as number, outline[i + 1] as number];
    polygon[i] = x + cos * px - sin * py;
    polygon[i + 1] = y + sin * px + cos * py;
    const radius = Math.hypot(px, py);
    from = Math.min(from, radius);
    to = Math.max(to, radius);
  }
  return { x, y, polygon, ring, from, to, bands: bandsOf(polygon, y, to) };
}

/** How two outlines meet: how deep one reaches into the other, and how near they come; ≥ 0. */
export interface Meeting {
  readonly overlap: number;
  readonly gap: number;
}

/** Looks no further than `near`: a deeper overlap is told as that deep. */
export function meetingOf(a: Standing, b: Standing, near: number): Meeting {
  const one = probe(a, b, near);
  const other = probe(b, a, near);
  return { overlap: Math.max(one.overlap, other.overlap), gap: Math.min(one.gap, other.gap) };
}

function probe(a: Standing, b: Standing, near: number): Meeting {
  let [overlap, gap] = [0, Number.POSITIVE_INFINITY];
  const segments = pointsNear(b.polygon, a, near);
  for (const i of pointsNear(a.polygon, b, near)) {
    const [x, y] = [a.polygon[i] as number, a.polygon[i + 1] as number];
    const distance = distanceTo(b.polygon, segments, x, y);
    gap = Math.min(gap, distance);
    if (distance > overlap && contains(b, x, y) !== b.ring) {
      overlap = Math.min(distance, near);
    }
  }
  return { overlap, gap };
}

// The points of an outline where another's teeth can be.
function pointsNear(polygon: Polygon, { x, y, ring, from, to }: Standing, near: number): number[] {
  const found: number[] = [];
  for (let i = 0; i < polygon.length; i += 2) {
    const radius = Math.hypot((polygon[i] as number) - x, (polygon[i + 1] as number) - y);
    if (ring ? radius > from - near : radius < to + near) found.push(i);
  }
  return found;
}

// To the segments that begin at the points.
function distanceTo(polygon: Polygon, points: readonly number[], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const i of points) {
    const j = i + 2 < polygon.length ? i + 2 : 0;
    const [ax, ay] = [(polygon[i] as number) - x, (polygon[i + 1] as number) - y];
    const [dx, dy] = [(polygon[j] as number) - x - ax, (polygon[j + 1] as number) - y - ay];
    const t = Math.max(0, Math.min(1, -(ax * dx + ay * dy) / (dx * dx + dy * dy || 1)));
    least = Math.min(least, (ax + t * dx) ** 2 + (ay + t * dy) ** 2);
  }
  return Math.sqrt(least);
}

// Whether a line from the point to the right crosses the outline an odd number of times; only
// the steps of the outline in the point's band of heights can be crossed.
function contains({ polygon, bands, y: middle, to }: Standing, x: number, y: number): boolean {
  let odd = false;
  for (const i of bands[bandOf(y - middle, to)] ?? []) {
    const j = i + 2 < polygon.length ? i + 2 : 0;
    const [ax, ay] = [polygon[i] as number, polygon[i + 1] as number];
    const [bx, by] = [polygon[j] as number, polygon[j + 1] as number];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) odd = !odd;
  }
  return odd;
}

const BANDS = 80;

function bandOf(y: number, to: number): number {
  return Math.floor(((y / to + 1) / 2) * (BANDS - 1));
}

function bandsOf(polygon: Polygon, y: number, to: number): number[][] {
  const bands = Array.from({ length: BANDS }, (): number[] => []);
  for (let i = 0; i < polygon.length; i += 2) {
    const j = i + 2 < polygon.length ? i + 2 : 0;
    const ends = [(polygon[i + 1] as number) - y, (polygon[j + 1] as number) - y];
    const last = bandOf(Math.max(...ends), to);
    for (let band = bandOf(Math.min(...ends), to); band <= last; band++) bands[band]?.push(i);
  }
  return bands;
}
