import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { Dice, seedOfRun } from '../../../test/dice.ts';
import { hashOf } from './index.ts';

// Remembered: NIST, "SHA-256", the examples of FIPS 180-4 (one block and two).
it.each([
  ['abc', 'ba7816bf8f01'],
  ['abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq', '248d6a61d206'],
])('the hash of %s is the published one', (text, hash) => {
  expect(hashOf(text)).toBe(hash);
});

it(`the hash of any text is that of another program (SEED=${seedOfRun()})`, () => {
  const dice = new Dice(seedOfRun());
  for (let length = 0; length < 300; length++) {
    const text = Array.from({ length }, () => String.fromCodePoint(dice.whole(1, 0xd7ff))).join('');
    const its = createHash('sha256').update(text).digest('hex').slice(0, 12);
    expect([length, hashOf(text)]).toEqual([length, its]);
  }
});
