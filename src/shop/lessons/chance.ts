/**
 * The items in an order that a seed and a text settle: one question keeps its order whatever
 * else is asked. Fisher and Yates's shuffle, with Tommy Ettinger's mulberry32 (public domain),
 * started from the text by the 32-bit FNV-1a of Fowler, Noll and Vo.
 */
export function shuffled<T>(items: readonly T[], seed: number, text: string): T[] {
  const unit = mulberry32((hash(text) ^ seed) >>> 0);
  const order = items.slice();
  for (let last = order.length - 1; last > 0; last--) {
    const other = Math.floor(unit() * (last + 1));
    [order[last], order[other]] = [order[other] as T, order[last] as T];
  }
  return order;
}

function mulberry32(start: number): () => number {
  let state = start;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function hash(text: string): number {
  let value = 0x811c9dc5;
  for (let k = 0; k < text.length; k++) {
    value = Math.imul(value ^ text.charCodeAt(k), 0x01000193);
  }
  return value >>> 0;
}
