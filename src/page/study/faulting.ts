import { signal } from '@preact/signals';
import type { faulty } from './faulty.ts';

/** What makes a wrong build; a fault of the oil settles it anew, so it is fetched after the first picture. */
export const faulting = signal<typeof faulty | undefined>(undefined);

export async function learnFaults(): Promise<void> {
  const its = await import('./faulty.ts');
  faulting.value = its.faulty;
}
