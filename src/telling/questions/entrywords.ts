/** Of each figure its label, its question and a hint, by the last keys that lead to it. */
export type EntryWords = Readonly<
  Record<string, readonly [label: string, question: string, hint?: string]>
>;
