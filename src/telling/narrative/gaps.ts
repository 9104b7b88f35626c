import { compare, fraction, opposite, type Rational, signOf } from '../../engine/linear/index.ts';
import type { Gap, Length, LengthUnit } from '../../shop/length/index.ts';
import {
  type Again,
  type Bounds,
  isClosed,
  type Selection,
  toldApart,
  type Verdict,
} from '../../shop/limits/index.ts';
import { asFineAs, lengthText } from './packs.ts';
import { keyOf, type Voice } from '../voice/index.ts';

// What every gap has in common, in words: `first` is the unit that stands first.

/** A reckoned gap and how far it may be off, told as finely as a reading. */
export function gapTexts(
  { um, worstUm, likelyUm }: Gap,
  tool: Length,
  voice: Voice,
  first?: LengthUnit,
) {
  const told = (its: Rational | number) => lengthText(asFineAs(its, tool), voice, first);
  return { clearance: told(um), worst: told(worstUm), likely: told(likelyUm) };
}

/** By how much a part must become thicker, or thinner where even the most is below 0. */
export function thickerTexts(
  { leastUm, mostUm }: { readonly leastUm: Rational; readonly mostUm: Rational },
  tool: Length,
  voice: Voice,
  first?: LengthUnit,
) {
  const told = (um: Rational) => lengthText(asFineAs(um, tool), voice, first);
  return signOf(mostUm) < 0
    ? { which: 'thinner', from: told(opposite(mostUm)), to: told(opposite(leastUm)) }
    : { which: 'thicker', from: told(leastUm), to: told(mostUm) };
}

export function verdictText(verdict: Verdict | undefined, voice: Voice): string {
  return voice.say('verdict', { verdict: keyOf(verdict ?? 'none') });
}

/** What was measured again with the chosen part in: as predicted, and closed, or not. */
export function closedText(
  again: Again,
  bounds: Bounds | undefined,
  voice: Voice,
  first?: LengthUnit,
): string {
  const told = (length: Length) => lengthText(length, voice, first);
  const { clearance } = again.measured;
  const gap = again.predicted && gapTexts(again.predicted, clearance, voice, first);
  return voice.say('pack.closed', {
    size: told(again.fitted),
    clearance: told(toldApart(clearance, bounds ?? {})),
    verdict: verdictText(again.verdict, voice),
    agrees: again.agrees === undefined ? 'none' : again.agrees ? 'yes' : 'no',
    predicted: gap?.clearance ?? '',
    worst: gap?.worst ?? '',
    closes: isClosed(again) ? 'yes' : 'no',
  });
}

/**
 * What to do with the best part of a shelf; undefined where it leaves the gap outside: it is not to
 * be fitted, and a remark says so.
 */
export function nextText(
  { best }: Selection,
  part: string,
  tool: Length,
  voice: Voice,
  first?: LengthUnit,
): string | undefined {
  if (best.verdict !== 'inside') return undefined;
  const size = lengthText(best.size, voice, first);
  const values = { part: keyOf(part), size, safe: best.safe ? 'yes' : 'no' };
  return best.stays
    ? voice.say('pack.stays', values)
    : voice.say('pack.again', { ...values, ...gapTexts(best.predicted, tool, voice, first) });
}

/** A tool no coarser than hundredths: what the file's own sizes leave is no coarser for a coarse reading. */
export function fineTool(tool: Length | undefined): Length {
  return tool && compare(tool.stepUm, HUNDREDTHS.stepUm) < 0 ? tool : HUNDREDTHS;
}

/** What is told where no tool was used: hundredths of a millimetre. */
export const HUNDREDTHS: Length = { um: fraction(0), stepUm: fraction(10) };
