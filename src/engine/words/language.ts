/** The languages in which answers are told, and in which a train file may carry names. */
export const LANGUAGES = ['en', 'es'] as const;

/** One of them. */
export type Language = (typeof LANGUAGES)[number];
