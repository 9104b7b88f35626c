import { compare, ONE, type Rational, signOf, toNumber } from '../../engine/linear/index.ts';
import type { BackOff } from '../../shop/bands/index.ts';
import type { Voice } from '../voice/index.ts';

/** By how much to back off a band's screw, and between what it is inside. */
export function backOffText({ best, least, most }: BackOff, voice: Voice): string {
  return voice.say('band.back off', {
    ...turnsText(best, voice),
    from: turnsText(least, voice).turns,
    to: turnsText(most, voice).turns,
  });
}

/** "2 1/2" of turns in eighths, and else two decimals; and whether it is one turn or a part of it. */
export function turnsText(turns: Rational, voice: Voice): { turns: string; many: 'yes' | 'no' } {
  const many = signOf(turns) > 0 && compare(turns, ONE) <= 0 ? 'no' : 'yes';
  return { turns: inEighths(turns, voice), many };
}

function inEighths(turns: Rational, voice: Voice): string {
  const eighths = toNumber(turns) * 8;
  if (!Number.isInteger(eighths)) {
    return voice.written(toNumber(turns).toFixed(2));
  }
  const [whole, left] = [Math.floor(eighths / 8), eighths % 8];
  const [top, bottom] = left % 4 === 0 ? [left / 4, 2] : left % 2 === 0 ? [left / 2, 4] : [left, 8];
  // A blank at which no line is broken.
  const part = left === 0 ? '' : `${top}/${bottom}`;
  return whole === 0 && part !== '' ? part : `${whole}${part === '' ? '' : `\u00A0${part}`}`;
}
