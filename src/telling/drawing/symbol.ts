import type { Way } from '../../engine/train/index.ts';
import type { Mark, Path } from './scene.ts';
import { round } from './svg.ts';

// The symbols follow the sense of ISO 3952 (kinematic diagrams; from memory, not from its text):
// a wheel in section is a web with a bar at its rim, plates that interleave are a clutch or a
// brake, hatching is what stands still.

const HALF = 10; // half the width of a wheel's rim
const GAP = 2.5; // from a rim to the line where two of them meet

export function planet(x: number, top: number, foot: number): Path {
  const rims = `M${round(x - HALF)} ${round(top + GAP)}h${2 * HALF}M${round(x - HALF)} ${round(foot - GAP)}h${2 * HALF}`;
  return {
    mark: 'path',
    look: 'planet',
    d: `M${round(x)} ${round(top + GAP)}V${round(foot - GAP)}${rims}`,
  };
}

export function sun(x: number, rim: number): Path {
  const d = `M${round(x - HALF)} ${round(rim + GAP)}h${2 * HALF}`;
  return { mark: 'path', look: 'wheel', d };
}

/** `rim` is where the ring's web ends, `teeth` where its teeth are. */
export function ring(x: number, rim: number, teeth: number): Path {
  const web = rim < teeth - 0.01 ? `M${round(x)} ${round(rim)}V${round(teeth - GAP)}` : '';
  return {
    mark: 'path',
    look: 'wheel',
    d: `${web}M${round(x - HALF)} ${round(teeth - GAP)}h${2 * HALF}`,
  };
}

export function bevelPinion(x: number, top: number, foot: number): Path {
  const middle = (top + foot) / 2;
  const d = `M${round(x - 8)} ${round(middle)}h16M${round(x - 12)} ${round(foot - 6)}l8 -14M${round(x + 12)} ${round(foot - 6)}l-8 -14`;
  return { mark: 'path', look: 'planet', d };
}

export function bevelSide(x: number, rim: number, left: boolean): Path {
  const way = left ? 1 : -1;
  return {
    mark: 'path',
    look: 'wheel',
    d: `M${round(x - 9 * way)} ${round(rim + 6)}l${18 * way} -10`,
  };
}

/** Plates of two members, by turns, between their lines. */
export function plates(a: number, b: number, top: number, foot: number): Path {
  const [left, right] = [Math.min(a, b), Math.max(a, b)];
  const step = (foot - top) / 6;
  let d = '';
  for (let k = 1; k <= 5; k++) {
    const y = round(top + k * step);
    d +=
      k % 2 === 1
        ? `M${round(left)} ${y}H${round(right - 5)}`
        : `M${round(left + 5)} ${y}H${round(right)}`;
  }
  return { mark: 'path', look: 'plates', d };
}

/** A drum with a band round it, whose end is anchored in the case. */
export function band(member: number, held: number, caseY: number): Path {
  const way = Math.sign(held - member);
  const drum = `M${round(member - 14)} ${round(caseY + 20)}h28`;
  const wrap = `M${round(member - 14)} ${round(caseY + 13)}h28`;
  const anchor = `M${round(member + way * 14)} ${round(caseY + 13)}V${round(caseY)}`;
  return { mark: 'path', look: 'band', d: drum + wrap + anchor };
}

/** What hangs from the case to carry plates or a race. */
export function hanger(x: number, caseY: number): Path {
  return { mark: 'path', look: 'case', d: `M${round(x)} ${round(caseY)}v64` };
}

/** A one-way clutch between two lines, and how the first may turn, seen from the input end. */
export function oneWay(first: number, second: number, y: number, lets: Way): Mark[] {
  const way = Math.sign(second - first);
  const [near, far] = [first, second].map((x) => round(x));
  const middle = (first + second) / 2;
  // A roller between the races, and the ramp on which it wedges.
  const races = `M${near} ${round(y)}H${round(middle - way * 5)}M${far} ${round(y - 10)}L${round(middle + way * 4)} ${round(y + 8)}`;
  const roller = `M${round(middle - 5)} ${round(y)}a5 5 0 1 1 10 0a5 5 0 1 1 -10 0Z`;
  return [{ mark: 'path', look: 'one-way', d: races + roller }, turnArrow(middle, y + 24, 9, lets)];
}

/** A round arrow, as who looks from the input end sees it turn. */
export function turnArrow(x: number, y: number, radius: number, way: Way): Path {
  const sweep = way === 'clockwise' ? 1 : 0;
  const side = way === 'clockwise' ? 1 : -1;
  const [dx, dy] = [radius * Math.cos(Math.PI / 6), radius * Math.sin(Math.PI / 6)];
  const [tipX, tipY] = [x + side * dx, y + dy];
  const arc = `M${round(x - side * dx)} ${round(y + dy)}A${radius} ${radius} 0 1 ${sweep} ${round(tipX)} ${round(tipY)}`;
  const head = `M${round(tipX - side * 5.5)} ${round(tipY - 3.5)}L${round(tipX)} ${round(tipY)}L${round(tipX + side * 4.5)} ${round(tipY - 5)}`;
  return { mark: 'path', look: 'arrow', d: arc + head };
}

/** Standing still: a short bar with hatching on the far side. */
export function ground(x: number, y: number, side: 'top' | 'foot'): Path {
  return { mark: 'path', look: 'case', d: hatched(x - 14, x + 14, y, side === 'top' ? -1 : 1) };
}

/** A line that stands still, hatched above (-1) or below (1). */
export function hatched(from: number, to: number, y: number, side: 1 | -1): string {
  let d = `M${round(from)} ${round(y)}H${round(to)}`;
  for (let x = from + 4; x < to - 1; x += 9) d += `M${round(x)} ${round(y)}l5 ${7 * side}`;
  return d;
}

/** The rim of a wheel of a gear pair, or of a chain's sprocket. */
export function pairWheel(x: number, y: number, above: boolean, chain: boolean): Path {
  const at = round(y + (above ? -GAP : GAP));
  const rim = `M${round(x - 15)} ${at}h30`;
  const links = `M${round(x - 10)} ${at}v${above ? 5 : -5}M${round(x)} ${at}v${above ? 5 : -5}M${round(x + 10)} ${at}v${above ? 5 : -5}`;
  return { mark: 'path', look: 'wheel', d: chain ? rim + links : rim };
}

/** Where the load goes in, or comes out. */
export function endArrow(x: number, y: number, end: 'input' | 'output'): Path {
  const from = end === 'input' ? x - 20 : x;
  return { mark: 'path', look: 'end', d: `M${round(from)} ${round(y)}h18m-7 -7l7 7l-7 7` };
}
