import type { Photograph } from './store.ts';

/** A picture that came by the name of another one, and the name that it is kept by. */
export interface OtherPicture {
  readonly name: string;
  readonly kept: string;
}

/** What of some pictures is not here yet; one that is another than ours of its name has a new name. */
export function parted(
  ours: readonly Photograph[],
  theirs: readonly Photograph[],
): { readonly pictures: readonly Photograph[]; readonly others: readonly OtherPicture[] } {
  const known = new Map(ours.map(({ name, bytes }) => [name, bytes]));
  const pictures: Photograph[] = [];
  const others: OtherPicture[] = [];
  for (const { name, bytes } of theirs) {
    const free = nameFor(name, (its) => known.get(its), bytes);
    if (known.has(free)) continue;
    known.set(free, bytes);
    pictures.push({ name: free, bytes });
    if (free !== name) others.push({ name, kept: free });
  }
  return { pictures, others };
}

// The first of "a.jpg", "a-2.jpg", … that nobody bears, or that bears this very picture.
function nameFor(
  name: string,
  known: (name: string) => Uint8Array | undefined,
  bytes: Uint8Array,
): string {
  const [, stem = name, ending = ''] = /^(.*?)(\.[^./]*)?$/u.exec(name) ?? [];
  for (let n = 1; ; n++) {
    const its = n === 1 ? name : `${stem}-${n}${ending}`;
    const there = known(its);
    if (!there || isSame(there, bytes)) return its;
  }
}

function isSame(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, i) => byte === b[i]);
}
