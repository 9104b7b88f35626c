import type { Draws, Length } from '../../shop/length/index.ts';
import { drawnLength, lengthText, type Voice } from '../narrative/index.ts';
import { type Page, paragraph, table } from '../text/index.ts';

type Share = NonNullable<Draws['outside']>['all'];

/** What stacks by chance leave, told no finer than the tool, nor than so many draws can tell. */
export function drawsLines(draws: Draws, tool: Length, page: Page): string[] {
  const { voice } = page;
  const { outside, quantiles, seed } = draws;
  const rows = quantiles.map(({ ofThousand, um, giveUm }) => {
    const length = drawnLength(um, giveUm, tool);
    return [`${ofThousand}`, lengthText(length, voice, page.unit)];
  });
  const made = voice.say('trials.made', { trials: grouped(draws.draws), series: `${seed}` });
  const values = outside && {
    none: outside.all.count === 0 ? 'yes' : 'no',
    ...sharesOf(outside.all, voice),
    below: percentText(outside.below, voice),
    above: percentText(outside.above, voice),
  };
  return [
    ...paragraph(made, page),
    ...table(['stacks', 'leave'], rows, page),
    ...(values ? paragraph(voice.say('trials.outside', values), page) : []),
  ];
}

function sharesOf(share: Share, voice: Voice) {
  const told = (value: number) => percentText({ ...share, share: value }, voice);
  return { all: percentText(share, voice), from: told(share.from), to: told(share.to) };
}

// "2.56": as many decimals as the draws can tell.
function percentText({ share, from, to }: Share, voice: Voice): string {
  const give = 50 * (to - from);
  const decimals = Math.min(6, Math.max(0, Math.ceil(-Math.log10(give))));
  return voice.written((100 * share).toFixed(decimals));
}

// "1 000 000": as both languages may write it.
function grouped(count: number): string {
  return `${count}`.replaceAll(/\B(?=(?:\d{3})+$)/gu, '\u00A0');
}
