/** A seeded source of chance, so that a failing case can be played again (mulberry32). */
export class Dice {
  private state: number;

  constructor(seed: number) {
    this.state = seed >>> 0;
  }

  /** A whole number from `least` to `most`, both included. */
  whole(least: number, most: number): number {
    return least + Math.floor(this.unit() * (most - least + 1));
  }

  chance(probability: number): boolean {
    return this.unit() < probability;
  }

  pick<T>(from: readonly T[]): T {
    if (from.length === 0) throw new Error('nothing to pick from');
    return from[this.whole(0, from.length - 1)] as T;
  }

  /** `count` different ones of `from` (all of them where there are fewer), in chance order. */
  several<T>(from: readonly T[], count: number): T[] {
    const rest = from.slice();
    const picked: T[] = [];
    while (picked.length < count && rest.length > 0) {
      picked.push(...rest.splice(this.whole(0, rest.length - 1), 1));
    }
    return picked;
  }

  // Tommy Ettinger's mulberry32, public domain: 32 bits of state, a period of 2^32.
  private unit(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let mixed = this.state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }
}

/** A plain check rolls the same dice every time: what falls, falls for everybody. */
const SEED = 20_261_128;

/** The seed of this run: SEED from the environment (`./prove` takes a new one), or the usual one. */
export function seedOfRun(): number {
  const given = process.env['SEED'];
  if (given === undefined) return SEED;
  const seed = Number(given);
  if (!Number.isSafeInteger(seed)) throw new Error(`SEED must be a whole number, not ${given}`);
  return seed;
}

/** How many cases: the usual number, or as many times more as TIMES says (`./prove`). */
export function tries(usual: number): number {
  return usual * Number(process.env['TIMES'] ?? 1);
}
