import { expect, it } from 'vitest';
import { isSpan, flow, ledgerOf, pushesOf } from '../../engine/flow/index.ts';
import {
  fraction,
  fromText,
  plus,
  type Rational,
  times,
  toText,
  ZERO,
} from '../../engine/linear/index.ts';
import { gearsOf } from '../../engine/train/index.ts';
import { voiceOf } from '../../telling/narrative/index.ts';
import { OURS, ours } from '../../../test/trains.ts';
import { Tally } from '../../../test/tally.ts';
import { balanceOf, provedText } from './balance.ts';

const voice = voiceOf('en');

it('the balance of a mesh is true as it is written, term by term', () => {
  const tally = new Tally({ meshes: 150, 'against the input': 20 });
  for (const name of OURS) {
    const train = ours(name);
    for (const { on } of gearsOf(train)) {
      const { drive } = flow(train, on);
      for (const mesh of ledgerOf(train, pushesOf(train, drive)).meshes) {
        const text = balanceOf(mesh, voice);
        // What a learner does with it, from the text alone.
        const [factors = '', products = '', sum] = text.replaceAll('−', '-').split(' = ');
        const terms = [...factors.matchAll(/(^|[+-] ?)(\d+) × \(?(-?[\d/]+)\)?/g)];
        expect(terms.length, text).toBe(mesh.terms.length);
        let total: Rational = ZERO;
        const written = products.replaceAll(' ', '').match(/[+-]?[\d/]+/g) ?? [];
        terms.forEach(([, sign = '', teeth, speed = ''], k) => {
          const value = rational(speed);
          const signed = fraction(Number(teeth) * (sign.startsWith('-') ? -1 : 1));
          const product = times(signed, value);
          expect(toText(rational((written[k] ?? '').replace('+', ''))), text).toBe(toText(product));
          total = plus(total, product);
          if (value.num < 0) tally.met('against the input');
        });
        expect([toText(total), sum], text).toEqual(['0', '0']);
        tally.met('meshes');
      }
      for (const [, torque] of drive.torques) {
        if (!isSpan(torque))
          expect(provedText(torque, voice)).toContain(voice.written(toText(torque)));
      }
    }
  }
  tally.enough();
});

it('a rounded number is not said to be equal', () => {
  expect(provedText(fraction(-121, 135), voice)).toBe('−121/135 ≈ −0.896');
  expect(provedText(fraction(5, 2), voice)).toBe('5/2 = 2.5');
  expect(provedText(fraction(-3), voice)).toBe('−3');
});

function rational(text: string): Rational {
  const value = fromText(text);
  if (!value) throw new Error(text);
  return value;
}
