/** The languages in which answers are told. */
export const LANGUAGES = ['en', 'es'] as const;

/** One of them. */
export type Language = (typeof LANGUAGES)[number];
