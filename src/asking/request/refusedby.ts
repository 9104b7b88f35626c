import { NoAnswer, type Refused } from './refused.ts';

/** Of a test: why there was no answer; undefined where there was one. */
export function refusedBy(ask: () => unknown): Refused | undefined {
  try {
    ask();
  } catch (error) {
    if (error instanceof NoAnswer) return error.why;
    throw error;
  }
  return undefined;
}
