import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * A file of ours that comes with the package, as a path from where the command was called. It
 * stands beside the package's own description, wherever it is installed and however bundled.
 */
export function ours(...steps: readonly string[]): string {
  let folder = path.dirname(fileURLToPath(import.meta.url));
  while (!fs.existsSync(path.join(folder, ...steps)) && folder !== path.dirname(folder)) {
    folder = path.dirname(folder);
  }
  return path.relative('.', path.join(folder, ...steps));
}
