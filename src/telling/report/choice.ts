import { compare, fraction, opposite, type Rational, signOf } from '../../engine/linear/index.ts';
import type { Gap, Length } from '../../shop/length/index.ts';
import {
  type Again,
  type Bounds,
  type Chosen,
  type Selection,
  speakAgainst,
  toldApart,
  type Verdict,
} from '../../shop/limits/index.ts';
import {
  asFineAs,
  keyOf,
  lengthText,
  type Remark,
  remarkText,
  type Voice,
  voiceOf,
} from '../narrative/index.ts';
import { type Page, paragraph } from './page.ts';
import { table } from './table.ts';

/** The best and the second-best part of a shelf as a table, and what to do with the best. */
export function choiceLines(
  { best, second }: Selection,
  part: string,
  tool: Length,
  page: Page,
): string[] {
  const voice = voiceOf(page.language);
  const told = (length: Length) => lengthText(length, voice, page.unit);
  const row = (rank: 'best' | 'second', { size, predicted, verdict, safe }: Chosen) => [
    voice.say('pack.rank', { rank }),
    told(size),
    ...Object.values(gapTexts(predicted, tool, page)),
    voice.say('pack.prediction', { verdict: keyOf(verdict), safe: safe ? 'yes' : 'no' }),
  ];
  const rows = [row('best', best), ...(second ? [row('second', second)] : [])];
  const values = { part: keyOf(part), size: told(best.size) };
  const next = best.stays
    ? voice.say('pack.stays', values)
    : voice.say('pack.again', { ...values, ...gapTexts(best.predicted, tool, page) });
  return [
    ...table(['rank', 'size', 'gives', 'give', 'likely', 'then'], rows, page),
    // A part that leaves it outside is not to be fitted: a remark says so.
    ...(best.verdict === 'inside' ? paragraph(next, page) : []),
  ];
}

/** What speaks against believing the numbers, which stands above the verdict; and what else is told. */
export function remarkLines(
  remarks: readonly Remark[],
  page: Page,
): { readonly against: string[]; readonly besides: string[] } {
  const voice = voiceOf(page.language);
  const lines = (some: readonly Remark[]) =>
    some.flatMap((remark) => {
      return paragraph(`! ${remarkText(remark, voice, page.unit)}`, page, '  ').map(page.ink.odd);
    });
  return {
    against: lines(remarks.filter((its) => speakAgainst([its]))),
    besides: lines(remarks.filter((its) => !speakAgainst([its]))),
  };
}

/** What was measured again with the chosen part in: as predicted, and closed, or not. */
export function closedLines(again: Again, bounds: Bounds | undefined, page: Page): string[] {
  const voice = voiceOf(page.language);
  const told = (length: Length) => lengthText(length, voice, page.unit);
  const { clearance } = again.measured;
  const gap = again.predicted && gapTexts(again.predicted, clearance, page);
  const text = voice.say('pack.closed', {
    size: told(again.fitted),
    clearance: told(toldApart(clearance, bounds ?? {})),
    verdict: verdictText(again.verdict, voice),
    agrees: again.agrees === undefined ? 'none' : again.agrees ? 'yes' : 'no',
    predicted: gap?.clearance ?? '',
    worst: gap?.worst ?? '',
    closes: again.verdict === 'inside' && again.agrees !== false ? 'yes' : 'no',
  });
  return paragraph(text, page);
}

/** A reckoned gap and how far it may be off, told as finely as a reading. */
export function gapTexts({ um, worstUm, likelyUm }: Gap, tool: Length, page: Page) {
  const voice = voiceOf(page.language);
  const told = (its: Rational | number) => lengthText(asFineAs(its, tool), voice, page.unit);
  return { clearance: told(um), worst: told(worstUm), likely: told(likelyUm) };
}

/** By how much a part must become thicker, or thinner where even the most is below 0. */
export function thickerTexts(
  { leastUm, mostUm }: { readonly leastUm: Rational; readonly mostUm: Rational },
  tool: Length,
  page: Page,
) {
  const voice = voiceOf(page.language);
  const told = (um: Rational) => lengthText(asFineAs(um, tool), voice, page.unit);
  return signOf(mostUm) < 0
    ? { which: 'thinner', from: told(opposite(mostUm)), to: told(opposite(leastUm)) }
    : { which: 'thicker', from: told(leastUm), to: told(mostUm) };
}

export function verdictText(verdict: Verdict | undefined, voice: Voice): string {
  return voice.say('verdict', { verdict: keyOf(verdict ?? 'none') });
}

/** A tool no coarser than hundredths: what the file's own sizes leave is no coarser for a coarse reading. */
export function fineTool(tool: Length | undefined): Length {
  return tool && compare(tool.stepUm, HUNDREDTHS.stepUm) < 0 ? tool : HUNDREDTHS;
}

/** What is told where no tool was used: hundredths of a millimetre. */
export const HUNDREDTHS: Length = { um: fraction(0), stepUm: fraction(10) };
