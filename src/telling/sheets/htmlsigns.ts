import type { Way } from '../../engine/train/index.ts';
import { drawn, type Markup } from './htmlcode.ts';

/** The sign of what can hurt; the words beside it say so. */
export function sign(look: 'sign' | 'caution-sign'): Markup {
  const edge = '<path d="M50 8 L94 86 L6 86 Z" fill="none" stroke="#000" stroke-width="9"';
  const ink = '<path d="M50 36 V62 M50 69 V78" stroke="#000" stroke-width="10"/>';
  return drawn(
    `<svg class="${look}" viewBox="0 0 100 92" aria-hidden="true">${edge} stroke-linejoin="round"/>${ink}</svg>`,
  );
}

/** Three quarters round, with a point at the end; the other way it is seen in a mirror. */
export function arrow(way: Way): Markup {
  const mirror = way === 'clockwise' ? '' : ' transform="matrix(-1 0 0 1 54 0)"';
  const [from, to] = [at(-200), at(52)];
  const round = `<path d="M${from} A23 23 0 1 1 ${to}" fill="none" stroke="#000" stroke-width="3.5"/>`;
  const [x, y] = to.split(' ').map(Number) as [number, number];
  const point = `<path d="M${x - 10} ${y - 3} L${x + 10} ${y - 5} L${x + 2} ${y + 13} Z"/>`;
  return drawn(
    `<svg class="arrow" viewBox="0 0 54 54" aria-hidden="true"><g${mirror}>${round}${point}</g></svg>`,
  );
}

function at(degrees: number): string {
  const turn = (degrees * Math.PI) / 180;
  const place = (along: number) => (27 + 23 * along).toFixed(1);
  return `${place(Math.cos(turn))} ${place(Math.sin(turn))}`;
}
