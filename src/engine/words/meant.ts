// No words for these things, but likely meant: the first that may stand there is offered.
const MEANT: ReadonlyMap<string, readonly string[]> = new Map([
  ['break', ['brake']],
  ['differential', ['sides', 'sets']],
  ['bevel', ['sides', 'sets']],
  ['sp', ['es']],
  ['spanish', ['es']],
  ['español', ['es']],
  ['english', ['en']],
  ['inglés', ['en']],
]);

/** Which of the words that may stand here is meant by one that no spelling leads to. */
export function wordMeant(word: string, among: ReadonlySet<string>): string | undefined {
  return MEANT.get(word.toLowerCase())?.find((meant) => among.has(meant));
}
