import { minus, toNumber } from '../../engine/linear/index.ts';
import { Chance } from './chance.ts';
import type { Length } from './length.ts';
import { type StackTerm, stackUp } from './stack.ts';

/** How many stacks to draw, and from what seed: whole numbers, from 1 and from 0. */
export interface DrawsAsked {
  readonly draws: number;
  readonly seed: number;
}

/** What stacks leave whose every size is drawn by chance, evenly between its two ends. */
export interface Draws extends DrawsAsked {
  /** In the order of `OF_THOUSAND`. */
  readonly quantiles: readonly Quantile[];
  /** Outside the limits; absent where there are none to be outside of. */
  readonly outside?: { readonly below: Share; readonly above: Share; readonly all: Share };
}

/** So many of a thousand stacks leave at most so much, in micrometres. */
export interface Quantile {
  readonly ofThousand: number;
  readonly um: number;
  /** By how much more draws may move it, with 19 chances in 20. */
  readonly giveUm: number;
}

/** A part of all stacks, 0 to 1, and between what it lies with 19 chances in 20. */
export interface Share {
  readonly count: number;
  readonly share: number;
  readonly from: number;
  readonly to: number;
}

const OF_THOUSAND = [1, 50, 500, 950, 999] as const;

/**
 * Draws stacks. Nothing is known of how a maker's sizes spread, so each is as likely anywhere
 * between its ends: that is wider than a bell and never wider than the worst case. The same
 * seed gives the same stacks.
 */
export function drawStacks(
  terms: readonly StackTerm[],
  { draws, seed }: DrawsAsked,
  limits?: { readonly least?: Length; readonly most?: Length },
): Draws {
  const { um, worstUm } = stackUp(terms);
  const lowUm = toNumber(minus(um, worstUm));
  const widths = Float64Array.from(
    terms.flatMap(({ tolUm }) => (tolUm && tolUm.num !== 0 ? [2 * toNumber(tolUm)] : [])),
  );
  const wideUm = 2 * toNumber(worstUm);
  const ends = { fromUm: endOf(limits?.least, -Infinity), toUm: endOf(limits?.most, Infinity) };
  const { bins, below, above } = counted(widths, { lowUm, wideUm, ...ends }, { draws, seed });
  const valueOf = (rank: number) => lowUm + (wideUm * binOf(bins, rank)) / BINS;
  const share = (count: number) => shareOf(count, draws);
  return {
    draws,
    seed,
    quantiles: OF_THOUSAND.map((ofThousand) => {
      // The order statistics two standard deviations to each side bound it, whatever the spread.
      const part = ofThousand / 1000;
      const give = 2 * Math.sqrt(draws * part * (1 - part));
      const at = (rank: number) => valueOf(Math.min(draws, Math.max(1, Math.ceil(rank))));
      const [from, to] = [at(draws * part - give), at(draws * part + give)];
      return { ofThousand, um: at(draws * part), giveUm: (to - from) / 2 };
    }),
    ...(limits &&
      (limits.least || limits.most) && {
        outside: { below: share(below), above: share(above), all: share(below + above) },
      }),
  };
}

function endOf(length: Length | undefined, none: number): number {
  return length ? toNumber(length.um) : none;
}

// A bin is far finer than any tool: the worst case over 2^16.
const BINS = 2 ** 16;

interface Room {
  readonly lowUm: number;
  readonly wideUm: number;
  readonly fromUm: number;
  readonly toUm: number;
}

// The stacks are counted into bins as they are drawn, for sorting a million takes longer than
// drawing them.
function counted(widths: Float64Array, { lowUm, wideUm, fromUm, toUm }: Room, asked: DrawsAsked) {
  const chance = Chance.of(asked.seed);
  const bins = new Uint32Array(BINS);
  const scaled = widths.map((width) => width / 2 ** 32);
  const perUm = wideUm > 0 ? BINS / wideUm : 0;
  let [below, above] = [0, 0];
  for (let draw = 0; draw < asked.draws; draw++) {
    let upUm = 0;
    for (let part = 0; part < scaled.length; part++) upUm += scaled[part]! * (chance.next() + 0.5);
    if (lowUm + upUm < fromUm) below++;
    else if (lowUm + upUm > toUm) above++;
    bins[Math.min(BINS - 1, Math.floor(upUm * perUm))]! += 1;
  }
  return { bins, below, above };
}

// The middle of the bin with the stack of a rank, counted from 1.
function binOf(bins: Uint32Array, rank: number): number {
  let before = 0;
  const bin = bins.findIndex((count) => (before += count) >= rank);
  return bin + 0.5;
}

/** By Edwin B. Wilson's interval (Journal of the American Statistical Association, 1927). */
function shareOf(count: number, of: number): Share {
  const [share, z2] = [count / of, Z ** 2];
  const middle = (share + z2 / (2 * of)) / (1 + z2 / of);
  const half = (Z / (1 + z2 / of)) * Math.sqrt((share * (1 - share)) / of + z2 / (4 * of ** 2));
  return { count, share, from: Math.max(0, middle - half), to: Math.min(1, middle + half) };
}

// 95 % of a normal spread lie within so many standard deviations.
const Z = 1.96;
