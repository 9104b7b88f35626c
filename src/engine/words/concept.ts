/** Something that people of the trade talk about, and what it is called. */
export interface Concept {
  /** Our word for it, in each language: no sentence, table, sheet or option says another. */
  readonly en: string;
  readonly es: string;
  /** The word for it in files, where that is not `en`. */
  readonly file?: string;
  /** Other words of the trade for it, in either language: read in files and on the command line. */
  readonly read?: readonly string[];
  /** What it was called here before: still read, and told once. */
  readonly once?: readonly string[];
  /** What is not said for it, where `read` and `once` do not show it already. */
  readonly not?: { readonly en?: RegExp; readonly es?: RegExp };
  /** Words of `read` and `once` that our sentences do say, of something else. */
  readonly stands?: readonly string[];
  /** Where the one language says it, so does the other. */
  readonly both?: { readonly en: RegExp; readonly es: RegExp };
}
