/**
 * Whole numbers by chance, from 0 to 2^32 - 1, which a seed settles: David Blackman and
 * Sebastiano Vigna's xoshiro128**, from "Scrambled linear pseudorandom number generators" (ACM
 * Transactions on Mathematical Software 47, 2021). Its state is filled, as they advise, by
 * SplitMix64 of Guy Steele, Doug Lea and Christine Flood (OOPSLA 2014).
 */
export class Chance {
  // On 32 bits with a sign, which is how the engine of the language adds fastest.
  private readonly state: Int32Array;

  /** `state`: four numbers, not all of them 0. */
  constructor(state: readonly number[]) {
    this.state = Int32Array.from(state, (part) => part | 0);
  }

  /** `seed`: a whole number from 0 to 2^53 - 1. */
  static of(seed: number): Chance {
    const next = splitMix64(BigInt(seed));
    const [a, b] = [next(), next()];
    return new Chance([a, a >> 32n, b, b >> 32n].map((part) => Number(BigInt.asUintN(32, part))));
  }

  next(): number {
    const { state } = this;
    const [a, b, c, d] = [state[0]!, state[1]!, state[2]!, state[3]!];
    const scrambled = Math.imul(rotated(Math.imul(b, 5), 7), 9);
    state[0] = a ^ d ^ b;
    state[1] = b ^ c ^ a;
    state[2] = c ^ a ^ (b << 9);
    state[3] = rotated(d ^ b, 11);
    return scrambled >>> 0;
  }
}

function rotated(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}

/** The numbers of SplitMix64, from 0 to 2^64 - 1. */
export function splitMix64(seed: bigint): () => bigint {
  let state = seed;
  const on64 = (value: bigint) => BigInt.asUintN(64, value);
  return () => {
    state = on64(state + 0x9e3779b97f4a7c15n);
    let mixed = state;
    mixed = on64((mixed ^ (mixed >> 30n)) * 0xbf58476d1ce4e5b9n);
    mixed = on64((mixed ^ (mixed >> 27n)) * 0x94d049bb133111ebn);
    return mixed ^ (mixed >> 31n);
  };
}
