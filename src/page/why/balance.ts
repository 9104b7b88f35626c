import type { MeshAccount } from '../../engine/flow/index.ts';
import { type Rational, signOf, times, toNumber, toText } from '../../engine/linear/index.ts';
import type { Voice } from '../../telling/narrative/index.ts';

/**
 * The balance of a mesh as it is reckoned, exactly: "30 × (−121/135) + 66 × 11/27 = −242/9 + 242/9
 * = 0", with whose speed each is. Fractions alone: a rounded decimal in a sum makes it untrue.
 */
export function balanceOf({ terms }: MeshAccount, voice: Voice): string {
  const factors = terms.map(({ member, coefficient, speed }, k) => {
    const size = `${Math.abs(coefficient)} × ${inside(speed, voice)} (${voice.name(member)})`;
    return coefficient < 0 ? `${k === 0 ? '−' : ' − '}${size}` : `${k === 0 ? '' : ' + '}${size}`;
  });
  const products = terms.map(({ coefficient, speed }, k) => {
    const product = times({ num: coefficient, den: 1 }, speed);
    const size = voice.written(toText(product).replace('-', ''));
    if (k === 0) return signOf(product) < 0 ? `−${size}` : size;
    return `${signOf(product) < 0 ? ' − ' : ' + '}${size}`;
  });
  return `${factors.join('')} = ${products.join('')} = 0`;
}

/** A number as a proof writes it: exactly, and where that is a fraction, about how much it is. */
export function provedText(value: Rational, voice: Voice): string {
  const exact = voice.written(toText(value));
  if (value.den === 1) return exact;
  // Three decimals say all of some fractions.
  const whole = Number.isInteger(toNumber(value) * 1000);
  return `${exact} ${whole ? '=' : '≈'} ${voice.decimal(value)}`;
}

function inside(speed: Rational, voice: Voice): string {
  const text = voice.written(toText(speed));
  return signOf(speed) < 0 ? `(${text})` : text;
}
