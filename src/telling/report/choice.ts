import type { Length } from '../../shop/length/index.ts';
import { type Chosen, type Selection, speakAgainst } from '../../shop/limits/index.ts';
import {
  gapTexts,
  keyOf,
  lengthText,
  nextText,
  type Remark,
  remarkText,
} from '../narrative/index.ts';
import { type Page, paragraph, table } from '../text/index.ts';

/** The best and the second-best part of a shelf as a table, and what to do with the best. */
export function choiceLines(
  selection: Selection,
  part: string,
  tool: Length,
  page: Page,
): string[] {
  const { voice } = page;
  const { best, second } = selection;
  const row = (rank: 'best' | 'second', { size, predicted, verdict, safe }: Chosen) => [
    voice.say('pack.rank', { rank }),
    lengthText(size, voice, page.unit),
    ...Object.values(gapTexts(predicted, tool, voice, page.unit)),
    voice.say('pack.prediction', { verdict: keyOf(verdict), safe: safe ? 'yes' : 'no' }),
  ];
  const rows = [row('best', best), ...(second ? [row('second', second)] : [])];
  const next = nextText(selection, part, tool, voice, page.unit);
  return [
    ...table(['rank', 'size', 'gives', 'give', 'likely', 'then'], rows, page),
    ...(next === undefined ? [] : paragraph(next, page)),
  ];
}

/** What speaks against believing the numbers, which stands above the verdict; and what else is told. */
export function remarkLines(
  remarks: readonly Remark[],
  page: Page,
): { readonly against: string[]; readonly besides: string[] } {
  const { voice } = page;
  const lines = (some: readonly Remark[]) =>
    some.flatMap((remark) => {
      return paragraph(`! ${remarkText(remark, voice, page.unit)}`, page, '  ').map(page.ink.odd);
    });
  return {
    against: lines(remarks.filter((its) => speakAgainst([its]))),
    besides: lines(remarks.filter((its) => !speakAgainst([its]))),
  };
}
