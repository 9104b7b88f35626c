/** Whether the reader's machine asks for little motion: then nothing moves until it is told to. */
export function isCalm(): boolean {
  return matchMedia('(prefers-reduced-motion: reduce)').matches;
}
