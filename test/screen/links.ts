import { readFileSync } from 'node:fs';
import path from 'node:path';
import { deflateRawSync } from 'node:zlib';
import { ROOT } from '../sources.ts';

/** The fragment that carries a text, as the command makes it. */
export function linkTo(text: string): string {
  return `#train=${deflateRawSync(text).toString('base64url')}`;
}

/** The text of a train of ours. */
export function ourText(name: string): string {
  return readFileSync(path.join(ROOT, `trains/${name}.train.yaml`), 'utf8');
}
