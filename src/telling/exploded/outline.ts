import {
  ownName,
  type Part,
  type PartKind,
  type Train,
  upOf,
  type Way,
} from '../../engine/train/index.ts';
import { plainOutline } from './kinds.ts';
import { Model, type Outline } from './model.ts';
import { oneWay } from './oneway.ts';
import { platesOf, stackPlates } from './packs.ts';
import { type DrawnWheel, LARGE, type Sizes } from './sizes.ts';
import { carrier, ring, sun } from './wheels.ts';

/**
 * A part of a train as an outline of its kind, its left face turned to the end that is up. Wheels
 * and planets are as large as their teeth say, plates as many as were counted; all else has sizes
 * of ours.
 */
export function outlineOf(
  train: Train,
  part: Part,
  kind: PartKind | undefined,
  sizes: Sizes,
): Outline {
  const model = new Model();
  const own = ownName(train);
  const carried = part.carries.map(own);
  const wheels = carried.flatMap((name): DrawnWheel[] => {
    const wheel = sizes.wheels.get(name);
    return wheel ? [wheel] : [];
  });
  const planets = carried.flatMap((name) => sizes.planets.get(name) ?? []);
  switch (kind) {
    case 'sun':
    case 'gear':
    case 'ring': {
      if (wheels.length === 0) wheels.push({ ...PLAIN, internal: kind === 'ring' });
      return inRow(model, wheels);
    }
    case 'carrier':
      inRow(model, wheels, 44);
      return carrier(model, 0, planets);
    case 'shaft': {
      const end = planets.length > 0 || wheels.length > 0;
      if (planets.length > 0) carrier(model, SHAFT_LONG, planets);
      inRow(model, wheels, SHAFT_LONG);
      return plainOutline(model, 'shaft', { short: end, hollow: /tube|tubo/iu.test(part.name) });
    }
    case 'drum':
    case 'pack': {
      const kinds = platesOf(part, train.packs ?? []);
      const shaft = carried.includes(own(train.input)) && kind === 'drum' ? 9 : undefined;
      if (kind === 'drum') drum(model, shaft === undefined);
      if (shaft !== undefined) model.turn(-14, { outer: shaft, long: 14 });
      const most = kinds.length > 0 ? kinds : DRAWN_PACK;
      const from = kind === 'drum' ? -14 : most.length * 8;
      const left =
        kind === 'drum' && kinds.length === 0
          ? from
          : stackPlates(model, from, most, LARGE - 6, shaft);
      if (shaft !== undefined) model.turn(left - 52, { outer: shaft, long: 45 });
      return model;
    }
    case 'one-way clutch':
      return oneWay(model, freeWay(train, part), /roll|rodill/iu.test(part.name));
    case undefined:
      return plainOutline(model, 'race');
    default:
      return plainOutline(model, kind);
  }
}

const SHAFT_LONG = 132;
const PLAIN = { teeth: 30, radius: 26, internal: false };
const DRAWN_PACK = ['friction', 'steel', 'friction', 'steel'] as const;

// Wheels that are one part, from the left, with a sleeve between them.
function inRow(model: Model, wheels: readonly DrawnWheel[], from = 0): Model {
  const step = 44;
  wheels.toReversed().forEach((wheel, back) => {
    const x = from + (wheels.length - 1 - back) * step;
    if (wheel.internal) ring(model, x, wheel, from > 0);
    else sun(model, x, wheel);
    if (back < wheels.length - 1) model.turn(x - step + 26, { outer: 11, long: step - 26 });
  });
  return model;
}

function drum(model: Model, bored: boolean): void {
  model.turn(0, { outer: LARGE, inner: LARGE - 6, long: 40, blind: true });
  if (bored) model.turn(3, { outer: 17, inner: 11, long: 13 });
}

// As one who looks at the left face sees the inner race turn; the face looks to the end that is up.
function freeWay(train: Train, part: Part): Way {
  const device = train.devices.find(({ kind, name }) => {
    return kind === 'one-way' && part.carries.includes(name);
  });
  const lets = device?.kind === 'one-way' ? device.lets : 'clockwise';
  if (upOf(train.teardown ?? [])(part) !== 'output') return lets;
  return lets === 'clockwise' ? 'anticlockwise' : 'clockwise';
}
