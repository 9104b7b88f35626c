import { type ReadonlySignal, signal } from '@preact/signals';
import type { Given } from '../../asking/request/index.ts';
import { recalled, remember } from '../words/index.ts';
import { readExperience } from './ours.ts';

/** A shop's own figures, where somebody chose a file of them; this browser keeps them. */
export const ownExperience: ReadonlySignal<Given | undefined> = signal(kept());

/** The figures by which what was seen is read: the shop's own, else common practice. */
export async function experienceUsed(): Promise<Given> {
  return ownExperience.value ?? { called: COMMON, text: await readExperience() };
}

/** Takes a shop's figures, known to be sound, or common practice again. Says whether they are kept. */
export function useExperience(given: Given | undefined): boolean {
  (ownExperience as { value: Given | undefined }).value = given;
  remember(NAME, given ? JSON.stringify(given) : '', ['browser']);
  return kept()?.text === given?.text;
}

const COMMON = 'experience.yaml';
const NAME = 'experience';

function kept(): Given | undefined {
  try {
    const word = JSON.parse(recalled(NAME, ['browser']) || 'null') as Given | null;
    return word && typeof word.text === 'string' ? word : undefined;
  } catch {
    return undefined;
  }
}
