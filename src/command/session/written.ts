import { Misuse, reasonOf } from '../machine/index.ts';
import type { Session } from './session.ts';

/** What `-o` can be: of each, how its files begin. */
const KINDS = {
  SVG: /^\s*<(?:[?!][^]*?<)?svg[\s/>]/u,
  PDF: /^%PDF-/u,
  Typst: /^\s*#let /u,
} as const;

/**
 * Puts an answer into a file. Refuses to put it over what it was made from, by whatever name, or
 * over a file of another kind: nobody has a second copy of a job.
 */
export function write(
  file: string,
  bytes: Uint8Array,
  kind: keyof typeof KINDS,
  { world, inputs }: Session,
): void {
  for (const input of inputs) {
    if (world.same(file, input)) throw new Misuse('bad.output read', { file });
  }
  try {
    const start = world.start(file);
    if (start !== undefined && !KINDS[kind].test(start)) {
      throw new Misuse('bad.output kind', { file, kind });
    }
    world.write(file, bytes);
  } catch (error) {
    throw error instanceof Misuse ? error : unwritable(file, error);
  }
}

/** Why a file could not be written, and what to do about it. */
export function unwritable(file: string, error: unknown): Misuse {
  const reason = reasonOf(error);
  if (reason === 'EISDIR') return new Misuse('bad.directory', { file });
  const full = reason === 'ENOSPC' || reason === 'EDQUOT';
  return new Misuse(full ? 'bad.full' : 'bad.unwritable', { file, reason });
}
