import { Refusal } from './refusal.ts';
import type { Session } from './session.ts';

/** Puts bytes into a file; refuses what cannot be written. */
export function write(file: string, bytes: Uint8Array, { world }: Session): void {
  try {
    world.write(file, bytes);
  } catch (error) {
    const reason = (error as NodeJS.ErrnoException).code ?? String(error);
    throw new Refusal('bad.unwritable', { file, reason });
  }
}
