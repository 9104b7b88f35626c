import { assemble, type Train } from '../../engine/train/index.ts';
import { arrange, crossingsOf } from './arrange.ts';
import { type Figure, figuresOf } from './figure.ts';
import { type Handle, handlesOf } from './handle.ts';
import { type Line, linesOfBodies } from './line.ts';
import { placesOf } from './place.ts';
import { stationsOf } from './station.ts';
import { stripsOf } from './strips.ts';
import { strokesOf } from './strokes.ts';

/**
 * The upper half of a train cut along its axis, laid out: shafts near the axis, sets in the
 * middle, drums around them, brakes at the case; an axis that a gear pair reaches is a strip
 * below. Sets are symbols, not to scale. Paint it with `paintHalfSection`.
 */
export interface HalfSection {
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

/** Lays a train out; deterministic. */
export function halfSection(train: Train): HalfSection {
  const assembly = assemble(train);
  const stations = stationsOf(train, assembly);
  const strips = stripsOf(train, assembly, stations);
  const subjects = { assembly, stations, strips };
  const arrangement = arrange(subjects);
  const strokes = strokesOf(subjects, arrangement);
  const places = placesOf(subjects, arrangement, strokes);
  return {
    name: train.name,
    width: places.width,
    height: places.height,
    lines: linesOfBodies(subjects, strokes, places),
    figures: figuresOf(subjects, arrangement, strokes, places),
    handles: handlesOf(subjects, strokes, places),
    caseY: places.caseY,
    axes: places.axes,
    crossings: crossingsOf(strokes),
  };
}
