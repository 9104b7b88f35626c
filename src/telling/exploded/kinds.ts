import type { PartKind } from '../../engine/train/index.ts';
import { round } from '../scene/index.ts';
import type { Model } from './model.ts';
import { LARGE } from './sizes.ts';
import { ellipse, lines, onCircle, pointText } from './solid.ts';

const HERE = { x: 0, y: 0 };

/** Parts whose sizes nothing in a file tells: each as its kind is usually made. */
export function plainOutline(
  model: Model,
  kind: PartKind,
  { short = false, hollow = false }: { readonly short?: boolean; readonly hollow?: boolean } = {},
): Model {
  switch (kind) {
    case 'shaft': {
      if (!short) splined(model, 108, 10);
      model.turn(34, { outer: 13, long: short ? 98 : 74 });
      splined(model, 0, 10);
      return hollow ? model.mark('solid-bore', ellipse(HERE, 6)) : model;
    }
    case 'shell':
      model.turn(0, { outer: LARGE - 2, inner: LARGE - 6, long: 44, blind: true });
      slots(model, LARGE - 2, 11);
      return model.turn(3, { outer: 19, inner: 13, long: 12 });
    case 'hub':
      model.turn(16, { outer: 46, inner: 12, long: 16, teeth: { count: 36, high: 3 } });
      return model.turn(0, { outer: 21, inner: 12, long: 16 });
    case 'race':
      return model.turn(0, { outer: 46, inner: 38, long: 18 });
    case 'washer':
      model.turn(0, { outer: 32, inner: 19, long: 3.5 });
      return radials(model, 8, 21, 30, 22.5);
    case 'bearing':
      model.turn(0, { outer: 34, inner: 18, long: 6 });
      model.mark('solid-line', ellipse(HERE, 31) + ellipse(HERE, 21));
      return radials(model, 24, 22, 30);
    case 'snap ring':
      return snapRing(model);
    case 'gasket':
      model.turn(0, { outer: LARGE + 4, inner: 30, long: 1.6, face: 'solid-soft' });
      return holes(model, 8, LARGE - 6, 4);
    case 'seal':
      model.turn(0, { outer: 27, inner: 20, long: 7 });
      return model.mark('solid-line', ellipse(HERE, 24));
    case 'piston':
      model.turn(0, { outer: 62, inner: 24, long: 15 });
      model.mark('solid-line', ellipse(HERE, 57) + ellipse(HERE, 30));
      return model.mark('solid-line', half({ x: 6, y: 0 }, 62) + half({ x: 10, y: 0 }, 62));
    case 'spring':
      for (let k = 6; k >= 0; k--) model.turn(k * 8, { outer: 24, inner: 20, long: 2.4 });
      return model;
    case 'servo':
      model.turn(20, { outer: 5, long: 44 });
      for (let k = 3; k >= 0; k--) model.turn(18 + k * 6, { outer: 15, inner: 12, long: 2 });
      model.turn(0, { outer: 30, long: 13 });
      return model
        .mark('solid-line', half({ x: 6.5, y: 0 }, 30))
        .mark('solid-line', ellipse(HERE, 12));
    case 'pump': {
      model.turn(16, { outer: 15, inner: 9, long: 34 });
      model.turn(0, { outer: LARGE + 4, long: 16 });
      holes(model, 8, LARGE - 5, 4);
      model.mark('solid-bore', ellipse({ x: 0, y: 0 }, 40));
      model.turn(1, { outer: 26, inner: 15, long: 2, teeth: { count: 18, high: 4 } });
      return model;
    }
    case 'support':
      model.turn(12, { outer: 27, inner: 17, long: 26 });
      model.turn(0, { outer: LARGE + 4, inner: 17, long: 12 });
      holes(model, 6, LARGE - 5, 4);
      return model.mark('solid-line', ellipse(HERE, 32));
    case 'cover':
      model.turn(12, { outer: LARGE, long: 9 });
      holes(model, 6, LARGE - 9, 4, 12);
      return model.turn(0, { outer: 26, inner: 13, long: 12 });
    case 'valve body':
      return valveBody(model);
    case 'pawl':
      return pawl(model);
    case 'band':
      return strap(model);
    // Those that have outlines of their own never come here but without a train.
    case 'drum':
    case 'sun':
    case 'ring':
    case 'carrier':
    case 'gear':
    case 'pack':
    case 'one-way clutch':
      return model.turn(0, { outer: 40, inner: 20, long: 16 });
  }
}

function splined(model: Model, x: number, radius: number): void {
  model.turn(x, { outer: radius, long: 34 });
  const degrees = Array.from({ length: 9 }, (_, k) => -80 + 20 * k);
  model.marks.push(lines({ x: x + 1, y: 0 }, { radius: radius - 0.5, degrees }, 30));
}

function radials(model: Model, count: number, from: number, to: number, turn = 0): Model {
  const d = Array.from({ length: count }, (_, k) => {
    const degrees = turn + (360 * k) / count;
    return `M${pointText(onCircle(HERE, from, degrees))}L${pointText(onCircle(HERE, to, degrees))}`;
  });
  return model.mark('solid-line', d.join(''));
}

function holes(model: Model, count: number, radius: number, size: number, x = 0): Model {
  for (let k = 0; k < count; k++) {
    const [at, y] = onCircle({ x, y: 0 }, radius, (360 * (k + 0.5)) / count);
    model.mark('solid-bore', ellipse({ x: at, y }, size));
  }
  return model;
}

// Slots that a shell's rim has for the lugs that drive it, where they are seen.
function slots(model: Model, radius: number, deep: number): void {
  for (let degrees = -50; degrees <= 50; degrees += 25) {
    const [top, foot] = [onCircle(HERE, radius, degrees - 6), onCircle(HERE, radius, degrees + 6)];
    const d = `M${pointText(top)}h${deep}L${pointText([foot[0] + deep, foot[1]])}h${-deep}Z`;
    model.mark('solid-bore', d);
  }
}

// The near half of a circle round the outside.
function half({ x, y }: { readonly x: number; readonly y: number }, radius: number): string {
  const wide = round(radius * 0.34);
  return `M${round(x)} ${round(y - radius)}A${wide} ${round(radius)} 0 0 1 ${round(x)} ${round(y + radius)}`;
}

// A ring with a gap, and an eye at each end of it.
function snapRing(model: Model): Model {
  const [outer, inner] = [52, 47];
  const edge = (radius: number, from: number, to: number) => {
    const steps = 48;
    return Array.from({ length: steps + 1 }, (_, k) => {
      return pointText(onCircle(HERE, radius, from + ((to - from) * k) / steps));
    });
  };
  const points = [...edge(outer, -80, 260), ...edge(inner, 260, -80)];
  model.mark('solid-face', `M${points.join('L')}Z`);
  for (const degrees of [-76, 256]) {
    const [x, y] = onCircle(HERE, inner - 2.5, degrees);
    model.mark('solid-face', ellipse({ x, y }, 4.5));
    model.mark('solid-mark', ellipse({ x, y }, 1.5));
  }
  return model.room(-outer * 0.34, outer * 0.34, outer);
}

// A strap round a drum, open at the top, with an ear at each end.
function strap(model: Model): Model {
  const [outer, long] = [LARGE + 2, 26];
  const ear = (degrees: number, tall: number) => {
    const [x, y] = onCircle(HERE, outer, degrees);
    const d = `M${round(x)} ${round(y + 2)}V${round(y - tall)}H${round(x + long)}V${round(y + 2)}Z`;
    model.mark('solid-side', d);
  };
  model.turn(0, { outer, inner: outer - 4, long });
  ear(-101, 13);
  ear(-79, 13);
  return model.room(0, 0, outer + 15);
}

function valveBody(model: Model): Model {
  const [wide, high, deep] = [124, 74, 12];
  const [x, y] = [-wide / 2, -high / 2];
  const end = x + wide;
  model.mark('solid-side', `M${x} ${y}L${x + deep} ${y - deep}H${end + deep}L${end} ${y}Z`);
  model.mark(
    'solid-side',
    `M${end} ${y}L${end + deep} ${y - deep}V${y + high - deep}L${end} ${y + high}Z`,
  );
  model.mark('solid-face', `M${x} ${y}H${end}V${y + high}H${x}Z`);
  const ways =
    `M${x + 14} ${y + 16}H${x + 58}V${y + 30}H${x + 96}` +
    `M${x + 14} ${y + 36}H${x + 40}V${y + 58}H${x + 70}V${y + 44}H${end - 14}` +
    `M${x + 78} ${y + 14}H${end - 16}M${x + 14} ${y + 58}H${x + 26}`;
  model.mark('solid-way', ways);
  for (const [dx, dy] of [
    [8, 8],
    [wide - 8, 8],
    [8, high - 8],
    [wide - 8, high - 8],
  ] as const) {
    model.mark('solid-bore', circle(x + dx, y + dy, 3));
  }
  return model.room(x, end + deep, high / 2 + deep);
}

function pawl(model: Model): Model {
  model.mark('solid-face', 'M-44 -10L-36 -22H10L46 -12V2H22V22H6V2L-30 8L-44 4Z');
  model.mark('solid-bore', circle(-34, -7, 6));
  return model.room(-46, 48, 24);
}

function circle(x: number, y: number, radius: number): string {
  const arc = (side: 1 | -1) =>
    `A${radius} ${radius} 0 0 1 ${round(x + side * radius)} ${round(y)}`;
  return `M${round(x - radius)} ${round(y)}${arc(1)}${arc(-1)}Z`;
}
