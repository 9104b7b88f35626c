import type { Way } from '../../engine/train/index.ts';
import type { Mark, Path } from './scene.ts';
import { round } from './svg.ts';

// The symbols follow the sense of ISO 3952 (kinematic diagrams; from memory, not from its text):
// a wheel in section is a web with a bar at its rim, plates that interleave are a clutch or a
// brake, hatching is what stands still.

const HALF = 15; // half the width of a wheel's rim
export const WIDE = 23; // half the width of a clutch
const MESH = 2.5; // from a rim to the line where two of them meet
const BEARING = 5; // from a pin to the wheel that turns on it

/** A planet's wheel on its pin. */
export function planet(x: number, pin: number, half: number): Path {
  const [top, foot] = [pin - half + MESH, pin + half - MESH];
  const d =
    `${across(x, top, HALF)}${across(x, foot, HALF)}` +
    `${across(x, pin - BEARING, 9)}${across(x, pin + BEARING, 9)}` +
    `M${round(x)} ${round(top)}V${round(pin - BEARING)}M${round(x)} ${round(pin + BEARING)}V${round(foot)}`;
  return { mark: 'path', look: 'planet', d };
}

/** What makes wheels in two columns one planet: a sleeve on the pin. */
export function sleeve(from: number, to: number, pin: number): Path {
  const [a, b] = [Math.min(from, to), Math.max(from, to)];
  const line = (y: number) => `M${round(a)} ${round(y)}H${round(b)}`;
  return { mark: 'path', look: 'planet', d: line(pin - BEARING) + line(pin + BEARING) };
}

/** A wheel that meshes what is above it; its body's line ends at `rim`. */
export function sun(x: number, rim: number): Path {
  return { mark: 'path', look: 'wheel', d: across(x, rim + MESH, HALF) };
}

/** A wheel that meshes what is below it, and its web up to its body's line. */
export function ring(x: number, rim: number, top: number): Path {
  const web = `M${round(x)} ${round(rim - MESH)}V${round(top)}`;
  return { mark: 'path', look: 'wheel', d: across(x, rim - MESH, HALF) + web };
}

/** Where the teeth of two rims meet. */
export function mesh(x: number, y: number): Path {
  return { mark: 'path', look: 'teeth', d: across(x, y, HALF - 1) };
}

/** Where teeth are gone: a cross instead of them. */
export function bare(x: number, y: number): Path {
  const [left, top] = [round(x - 9), round(y - 9)];
  return { mark: 'path', look: 'bare', d: `M${left} ${top}l18 18m-18 0l18 -18` };
}

/** A bevel pinion under its pin, and the teeth of its ends. */
export function bevelPinion(x: number, pin: number, top: number): Path {
  const d =
    `M${round(x)} ${round(top)}V${round(pin - 8)}M${round(x - 12)} ${round(pin - 8)}h24` +
    `M${round(x - 20)} ${round(pin + 10)}l8 -18M${round(x + 20)} ${round(pin + 10)}l-8 -18`;
  return { mark: 'path', look: 'planet', d };
}

/** A bevel side gear, left or right of its pinion; its body's line ends at `rim`. */
export function bevelSide(x: number, rim: number, left: boolean): Path {
  const way = left ? 1 : -1;
  const d = `M${round(x)} ${round(rim)}V${round(rim + 16)}h${8 * way}l${10 * way} -22`;
  return { mark: 'path', look: 'wheel', d };
}

/** Plates of a drum above and of a hub below, by turns. */
export function plates(x: number, drum: number, hub: number): Path {
  const reach = (hub - drum) * 0.74;
  let d = across(x, drum, WIDE) + across(x, hub, WIDE);
  for (let k = -2; k <= 2; k++) {
    const at = round(x + 9 * k);
    d +=
      k % 2 === 0
        ? `M${at} ${round(drum)}v${round(reach)}`
        : `M${at} ${round(hub)}v${round(-reach)}`;
  }
  return { mark: 'path', look: 'plates', d };
}

/** A drum with a band round it, whose end is anchored in the case. */
export function band(x: number, drum: number, caseY: number): Path {
  const wrap = `M${round(x - WIDE)} ${round(caseY)}V${round(drum - 9)}h${2 * WIDE}v9`;
  return { mark: 'path', look: 'band', d: across(x, drum, WIDE) + wrap };
}

/** A pawl that hangs from the case, and the notch of the wheel below it into which it falls. */
export function pawl(x: number, wheel: number, caseY: number): Path {
  const rim = `M${round(x - WIDE)} ${round(wheel)}H${round(x - 7)}v9h14v-9h${WIDE - 7}`;
  const tooth = `M${round(x)} ${round(caseY)}V${round(wheel)}m-4 -8v13h8v-13`;
  return { mark: 'path', look: 'pawl', d: rim + tooth };
}

/** A one-way clutch between an outer race above and an inner race below. */
export function oneWay(x: number, outer: number, inner: number, lets: Way): Mark[] {
  const middle = (outer + inner) / 2;
  const [up, down] = [middle - 11, middle + 11];
  const races =
    `M${round(x)} ${round(outer)}V${round(up)}M${round(x)} ${round(inner)}V${round(down)}` +
    across(x, up, 22) +
    across(x, down, 22) +
    across(x, outer, WIDE) +
    across(x, inner, WIDE);
  // The wedge narrows to the side on which the roller jams.
  const side = lets === 'clockwise' ? 1 : -1;
  const wedge = `M${round(x - 15 * side)} ${round(up)}l${30 * side} 12V${round(up)}`;
  const roller = `M${round(x - 12 * side - 5)} ${round(down - 6)}a5 5 0 1 1 10 0a5 5 0 1 1 -10 0Z`;
  return [
    { mark: 'path', look: 'one-way', d: races + wedge + roller },
    turnArrow(x + 36, middle, 9, lets),
  ];
}

/** A round arrow, as who looks from the input end sees it turn. */
export function turnArrow(x: number, y: number, radius: number, way: Way): Path {
  const sweep = way === 'clockwise' ? 1 : 0;
  const side = way === 'clockwise' ? 1 : -1;
  const [dx, dy] = [radius * Math.cos(Math.PI / 6), radius * Math.sin(Math.PI / 6)];
  const [tipX, tipY] = [x + side * dx, y + dy];
  const arc =
    `M${round(x - side * dx)} ${round(tipY)}` +
    `A${radius} ${radius} 0 1 ${sweep} ${round(tipX)} ${round(tipY)}`;
  const head =
    `M${round(tipX - side * 5.5)} ${round(tipY - 3.5)}L${round(tipX)} ${round(tipY)}` +
    `L${round(tipX + side * 4.5)} ${round(tipY - 5)}`;
  return { mark: 'path', look: 'arrow', d: arc + head };
}

/** The ground at the end of a line: a short bar, hatched above (-1) or below (1). */
export function ground(x: number, y: number, side: 1 | -1): Path {
  return { mark: 'path', look: 'case', d: hatched(x - 15, x + 15, y, side) };
}

/** A line that stands still, hatched above (-1) or below (1). */
export function hatched(from: number, to: number, y: number, side: 1 | -1): string {
  let d = `M${round(from)} ${round(y)}H${round(to)}`;
  for (let x = from + 4; x < to - 1; x += 9) d += `M${round(x)} ${round(y)}l5 ${7 * side}`;
  return d;
}

/** The rim of a wheel of a gear pair, or of a chain's sprocket. */
export function pairWheel(x: number, y: number, above: boolean, chain: boolean): Path {
  const at = y + (above ? -MESH : MESH);
  const tooth = `v${above ? 6 : -6}`;
  const links = [-12, 0, 12].map((dx) => `M${round(x + dx)} ${round(at)}${tooth}`).join('');
  return { mark: 'path', look: 'wheel', d: across(x, at, 18) + (chain ? links : '') };
}

/** Where the load goes in, or comes out. */
export function endArrow(x: number, y: number, end: 'input' | 'output'): Path {
  const from = end === 'input' ? x - 18 : x;
  return { mark: 'path', look: 'end', d: `M${round(from)} ${round(y)}h18m-8 -7l8 7l-8 7` };
}

function across(x: number, y: number, half: number): string {
  return `M${round(x - half)} ${round(y)}h${2 * half}`;
}
