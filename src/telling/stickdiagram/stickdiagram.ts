import { assemble, type Assembly, type Train } from '../../engine/train/index.ts';
import { asInFile } from '../scene/index.ts';
import { arrange } from './arrange.ts';
import { type Figure, figuresOf } from './figure.ts';
import { type Handle, handlesOf, type Leader, leadersOf, nameLines, rowRoom } from './handle.ts';
import { type Line, linesOfBodies } from './line.ts';
import { symbolBoxes } from './columns.ts';
import { type Places, placesOf, type Rows } from './place.ts';
import { meshName, stationsOf } from './station.ts';
import { stripsOf } from './strips.ts';
import { Drafting } from './strokes.ts';

/**
 * The upper half of a train cut along its axis, laid out: shafts near the axis, sets in the
 * middle, drums around them, brakes at the case; an axis that a gear pair reaches is a strip
 * below. Sets are symbols, not to scale. Paint it with `paintStickDiagram`.
 */
export interface StickDiagram {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** The lines of each body, which touch no other's but where a bridge passes over. */
  readonly lines: readonly Line[];
  /** Sets, devices, gear pairs and ends, each as its symbol with its name. */
  readonly figures: readonly Figure[];
  /** A dial a body, by which a hand turns or holds it, and the body's name. */
  readonly handles: readonly Handle[];
  /** The case along the top, and the centre line of each axis. */
  readonly caseY: number;
  readonly axes: readonly number[];
  /** How often a line passes over another's. */
  readonly crossings: number;
}

/**
 * Lays a train out with names as the reader calls things; the same train always alike. Fewer tries
 * are sooner, and cross more.
 */
export function stickDiagram(train: Train, nameOf = asInFile, tries = 1500): StickDiagram {
  const whole = withAllTeeth(train);
  const assembly = assemble(whole);
  const stations = stationsOf(whole, assembly);
  const strips = stripsOf(whole, assembly, stations);
  const drafting = new Drafting({ assembly, stations, strips, nameOf });
  const arrangement = arrange(drafting, tries);
  drafting.draw(arrangement);
  // Leaders choose their rows by what is in their way, and rows then take their room.
  const loose = placesOf(drafting, arrangement, { above: 100, below: strips.map(() => 100) });
  const leaders = (places: Places) => {
    const symbols = symbolBoxes(drafting, arrangement, places);
    return leadersOf(drafting, places, linesOfBodies(drafting, places), symbols);
  };
  const rows = rowsOf(drafting, leaders(loose));
  const places = placesOf(drafting, arrangement, rows);
  const lines = linesOfBodies(drafting, places);
  const { handles, width } = handlesOf(drafting, places, leaders(places));
  return {
    name: train.name,
    width,
    height: (places.strips.at(-1)?.foot ?? 0) + (rows.below[places.strips.length - 1] ?? 0) + 4,
    lines,
    figures: figuresOf(drafting, arrangement, places, bareOf(train, assembly)),
    handles,
    caseY: places.strips[0]?.caseY ?? 0,
    axes: places.strips.map(({ axis }) => axis),
    crossings: drafting.crossings(),
  };
}

// The meshes, by their names, of wheels that have lost their teeth; and such gear pairs.
function bareOf({ sets, pairs }: Train, { gearing }: Assembly): ReadonlySet<string> {
  const stripped = new Set(sets.flatMap(({ stripped: members = [] }) => members));
  const meshes = gearing.meshes.filter(({ a, b }) => {
    return stripped.has(a.member) || stripped.has(b.member);
  });
  return new Set([
    ...meshes.map(meshName),
    ...pairs.flatMap((pair) => (pair.stripped ? [pair.name] : [])),
  ]);
}

// A gear that has lost its teeth is drawn all the same, where it was.
function withAllTeeth(train: Train): Train {
  return {
    ...train,
    sets: train.sets.map((set) => ({ ...set, stripped: [] })),
    pairs: train.pairs.map((pair) => ({ ...pair, stripped: false })),
  };
}

function rowsOf(drafting: Drafting, leaders: readonly Leader[]): Rows {
  const room = (strip: number, above: boolean) => {
    const row = leaders.filter((leader) => leader.strip === strip && leader.above === above);
    return rowRoom(Math.max(0, ...row.map(({ body }) => nameLines(drafting, body).length)));
  };
  const strips = Array.from({ length: Math.max(0, ...drafting.subjects.strips) + 1 });
  return {
    above: room(0, true) || 14,
    below: strips.map((_, strip) => room(strip, false) || 26),
  };
}
