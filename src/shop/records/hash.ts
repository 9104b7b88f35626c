/**
 * The start of the hash of a file's text, by which two copies are told apart: 12 hexadecimal digits
 * of SHA-256 (FIPS 180-4) of its UTF-8 bytes, as the command prints it. By no way of the browser's own,
 * which keeps its to pages that came by a safe one.
 */
export function hashOf(text: string): string {
  const state = [...INITIAL];
  const bytes = padded(new TextEncoder().encode(text));
  for (let at = 0; at < bytes.byteLength; at += 64)
    compress(state, new DataView(bytes.buffer, at, 64));
  const hex = state.map((word) => (word >>> 0).toString(16).padStart(8, '0'));
  return hex.join('').slice(0, 12);
}

// A one, then noughts, then the length in bits (5.1.1).
function padded(bytes: Uint8Array): Uint8Array {
  const all = new Uint8Array(Math.ceil((bytes.length + 9) / 64) * 64);
  all.set(bytes);
  all[bytes.length] = 0x80;
  new DataView(all.buffer).setBigUint64(all.length - 8, BigInt(bytes.length) * 8n);
  return all;
}

// 6.2.2, in its own letters.
function compress(state: number[], block: DataView): void {
  const w = Array.from({ length: 16 }, (_, t) => block.getUint32(4 * t));
  const of = (its: readonly number[], t: number) => its[t] ?? 0;
  for (let t = 16; t < 64; t++) {
    const [x, y] = [of(w, t - 15), of(w, t - 2)];
    const small0 = turned(x, 7) ^ turned(x, 18) ^ (x >>> 3);
    const small1 = turned(y, 17) ^ turned(y, 19) ^ (y >>> 10);
    w.push((of(w, t - 16) + small0 + of(w, t - 7) + small1) | 0);
  }
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = state;
  for (let t = 0; t < 64; t++) {
    const large1 = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25);
    const t1 = (h + large1 + ((e & f) ^ (~e & g)) + of(ROUND, t) + of(w, t)) | 0;
    const large0 = turned(a, 2) ^ turned(a, 13) ^ turned(a, 22);
    const t2 = (large0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + t1) | 0, c, b, a, (t1 + t2) | 0];
  }
  for (const [i, its] of [a, b, c, d, e, f, g, h].entries()) state[i] = (of(state, i) + its) | 0;
}

function turned(word: number, by: number): number {
  return (word >>> by) | (word << (32 - by));
}

// 4.2.2 and 5.3.3: the first 32 bits of the fractions of the cube roots of the first 64 primes, and of
// the square roots of the first 8.
const PRIMES = primes(64);
const ROUND = PRIMES.map((prime) => fractionOf(Math.cbrt(prime)));
const INITIAL = PRIMES.slice(0, 8).map((prime) => fractionOf(Math.sqrt(prime)));

// A float has 52 bits behind a number below 2, and some roots are up to 7: 50 are enough for 32.
function fractionOf(root: number): number {
  return Math.floor((root % 1) * 2 ** 32) | 0;
}

function primes(count: number): readonly number[] {
  const found: number[] = [];
  for (let n = 2; found.length < count; n++) {
    if (found.every((prime) => n % prime !== 0)) found.push(n);
  }
  return found;
}
