import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../sources.ts';

const WEB = path.join(ROOT, 'dist/web');

interface Chunk {
  readonly file: string;
  readonly imports?: readonly string[];
  readonly isEntry?: boolean;
}

// The script of the page and all that it imports before it runs.
function needed(): string[] {
  const text = readFileSync(path.join(WEB, 'chunks.json'), 'utf8');
  const manifest = JSON.parse(text) as Record<string, Chunk>;
  const files = new Set<string>();
  const take = (chunk: Chunk | undefined) => {
    if (!chunk || files.has(chunk.file)) return;
    files.add(chunk.file);
    for (const name of chunk.imports ?? []) take(manifest[name]);
  };
  for (const chunk of Object.values(manifest)) if (chunk.isEntry) take(chunk);
  return [...files];
}

describe('the first view', () => {
  it('needs at most 150 kB of script, compressed', () => {
    const sizes = needed().map((file) => gzipSync(readFileSync(path.join(WEB, file))).length);
    expect(sizes.length).toBeGreaterThan(0);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(150_000);
  });

  it('is a page that allows no script but its own files, and no other host', () => {
    const page = readFileSync(path.join(WEB, 'index.html'), 'utf8');
    expect(page).toMatch(/Content-Security-Policy/u);
    expect(page).toMatch(/default-src 'none'; script-src 'self';/u);
    expect(page.match(/<script(?![^>]*\bsrc=)/gu)).toBe(null);
    expect(page).not.toMatch(/https?:\/\/(?!www\.w3\.org)/u);
  });
});
