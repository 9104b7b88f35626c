import {
  Base,
  compare,
  entry,
  equal,
  fraction,
  freedom,
  minus,
  over,
  type Rational,
  type Row,
  ZERO,
} from '../linear/index.ts';
import { type Motion, willis } from '../motion/index.ts';
import { spansFreedom } from '../proof/index.ts';
import { companyOf, type MemberName, type Mesh, ownName } from '../train/index.ts';

/**
 * A set as a straight lever: its members stand at places along it, and whatever they do, their
 * speeds, drawn as heights, lie on one straight line. Of a plain set the arms from the carrier to
 * the sun and to the ring are as the ring's teeth to the sun's (H. L. Benford and M. B. Leising,
 * "The Lever Analogy", SAE 810102, 1981). A gear pair is a lever that is pinned to the case.
 */
export interface Lever {
  /** The sets (those that share planets as one) and gear pairs that it stands for. */
  readonly within: readonly string[];
  /** From one end, at 0, to the other, at 1; planets are left out. */
  readonly nodes: readonly LeverNode[];
}

export interface LeverNode {
  /** The name under which the set knows it, and the body that it is on. */
  readonly member: MemberName;
  readonly body: number;
  readonly at: Rational;
}

/**
 * A lever for each set and gear pair, in the order of the file. Where meshes are missing members
 * may hang together no more: they are on no lever, or the set has several.
 */
export function leversOf(motion: Motion): Lever[] {
  const { train, assembly } = motion;
  const companies = new Map<string, Mesh[]>();
  for (const mesh of assembly.gearing.meshes) {
    const company = companyOf(train, mesh.within);
    companies.set(company, [...(companies.get(company) ?? []), mesh]);
  }
  return [...companies].flatMap(([company, meshes]) => {
    return linesThrough(pointsOf(motion, meshes)).map((nodes) => ({ within: [company], nodes }));
  });
}

// Every member of a set has a column of its own here, whatever it is joined to outside, so that a
// set that is tied up keeps its arms. The changes that its meshes leave are a few vectors, and a
// member's part in each makes it a point with that many coordinates. Turning as one is such a
// change: so a point that hangs on two others as α·p + β·q has α + β = 1, and lies on the line
// through them. Members on one line make a lever; their places are those on the line.
interface Point {
  readonly member: MemberName;
  readonly body: number;
  readonly at: readonly Rational[];
}

function pointsOf({ train, assembly }: Motion, meshes: readonly Mesh[]): Point[] {
  const own = ownName(train);
  const pins = new Map(assembly.gearing.planets.map(({ member, carrier }) => [member, carrier]));
  const columns = new Map<string, number>();
  const members = new Map<MemberName, number>();
  const columnOf = (member: MemberName): number => {
    const body = assembly.bodyOf(member) as number;
    const carrier = pins.get(member);
    // A planet's wheels are one body; one that has seized to its carrier turns with it.
    const onPin = carrier !== undefined && assembly.onPins.has(body);
    const name = onPin ? `pin ${body}` : own(carrier ?? member);
    const column = columns.get(name) ?? columns.size;
    columns.set(name, column);
    if (!onPin) members.set(name, column);
    return column;
  };
  const rows = meshes.map((mesh): Row => {
    const terms = new Map<number, number>();
    for (const [member, coef] of willis(mesh)) {
      const column = columnOf(member);
      terms.set(column, (terms.get(column) ?? 0) + coef);
    }
    const used = [...terms].filter(([, coef]) => coef !== 0);
    return { at: used.map(([at]) => at), coef: used.map(([, c]) => c), sense: '=', right: 0 };
  });
  const said = rows.filter(({ at }) => at.length > 0);
  const kernel = freedom(columns.size, said, new Base(columns.size, said));
  if (!spansFreedom(columns.size, said, kernel)) return [];
  return [...members].map(([member, column]) => {
    const at = kernel.map((vector) => entry(vector, column));
    return { member, body: assembly.bodyOf(member) as number, at };
  });
}

// Every line that three points or more are on; points that are all one are spread evenly, for
// they turn as one wherever they stand.
function linesThrough(points: readonly Point[]): LeverNode[][] {
  const lines: LeverNode[][] = [];
  points.forEach((p, i) => {
    for (const q of points.slice(i + 1)) {
      const both = (line: LeverNode[]) =>
        [p, q].every(({ member }) => line.some((node) => node.member === member));
      if (isOne(p, q) || lines.some(both)) continue;
      const line = points.flatMap((r): LeverNode[] => {
        const at = placeOn(p, q, r);
        return at ? [{ member: r.member, body: r.body, at }] : [];
      });
      if (line.length > 2) lines.push(fromEndToEnd(line));
    }
  });
  const [first] = points;
  if (!first || points.length < 3 || !points.every((point) => isOne(first, point))) return lines;
  const last = points.length - 1;
  return [points.map(({ member, body }, k) => ({ member, body, at: fraction(k, last) }))];
}

function isOne(p: Point, q: Point): boolean {
  return p.at.every((x, k) => equal(x, q.at[k] as Rational));
}

// The t of r = p + t·(q − p), if r is on the line.
function placeOn(p: Point, q: Point, r: Point): Rational | undefined {
  let place: Rational | undefined;
  for (let k = 0; k < p.at.length; k++) {
    const [a, b, c] = [p.at[k], q.at[k], r.at[k]] as [Rational, Rational, Rational];
    if (equal(a, b)) {
      if (!equal(a, c)) return undefined;
      continue;
    }
    const here = over(minus(c, a), minus(b, a));
    if (place && !equal(place, here)) return undefined;
    place = here;
  }
  return place;
}

/** The nodes in order, their places brought to 0 at the first and 1 at the last. */
export function fromEndToEnd(nodes: readonly LeverNode[]): LeverNode[] {
  const sorted = nodes.toSorted((a, b) => compare(a.at, b.at));
  const from = sorted[0]?.at ?? ZERO;
  const length = minus(sorted.at(-1)?.at ?? from, from);
  return sorted.map((node) => ({ ...node, at: over(minus(node.at, from), length) }));
}
