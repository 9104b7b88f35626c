/**
 * The id of an entry: a letter and 7 letters or digits made of its text, which therefore also
 * tell whether the text is whole. There are 2^39 of them.
 */
export function idOf(text: string): string {
  const hash = fnv1a(text);
  return [...Array(LENGTH).keys()]
    .map((place) => {
      const digit = Number((hash >> BigInt(BITS * place)) & 31n);
      // No number begins with a letter, in YAML either.
      return DIGITS[place === 0 ? digit | 16 : digit];
    })
    .join('');
}

/** 64 bits of a text's UTF-8 bytes, by FNV-1a (Fowler, Noll, Vo). */
export function fnv1a(text: string): bigint {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text)) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
  }
  return hash;
}

const LENGTH = 8;
const BITS = 5;
// Without i, l, o and u, which are misread; those from the 16th on are letters.
const DIGITS = '0123456789abcdefghjkmnpqrstvwxyz';
