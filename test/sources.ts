import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** A file of the checkout as the tests of the house see it. */
export interface Source {
  /** From the root, with `/` between folders. */
  readonly path: string;
  readonly text: string;
}

/** The root of the checkout, where the tests start. */
export const ROOT: string = path.resolve(import.meta.dirname, '..');

/** Every text file that belongs to the project, in order of its path. */
export function readSources(): Source[] {
  const here = readdirSync(ROOT, { withFileTypes: true })
    .filter((entry) => !NOT_OURS.has(entry.name))
    .flatMap((entry) => (entry.isDirectory() ? filesUnder(entry.name) : [entry.name]));
  return here
    .toSorted()
    .map((file) => ({ path: file, text: readFileSync(path.join(ROOT, file), 'utf8') }));
}

const NOT_OURS = new Set(['.git', 'node_modules', 'dist', 'package-lock.json']);

function filesUnder(folder: string): string[] {
  return readdirSync(path.join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(ROOT, path.join(entry.parentPath, entry.name)))
    .map((file) => file.split(path.sep).join('/'))
    .filter((file) => !file.includes('.changed.')); // left beside what is kept, see kept.ts
}
