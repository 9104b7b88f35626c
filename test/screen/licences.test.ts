import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { ROOT } from '../sources.ts';

const read = (file: string) => readFileSync(path.join(ROOT, 'dist', file), 'utf8');

// The name of each package that a notice tells, with the length of its text.
function told(notice: string, head: RegExp): Map<string, number> {
  const heads = [...notice.matchAll(head)];
  return new Map(
    heads.map(({ 0: line, 1: name = '', index }, k) => {
      const end = heads[k + 1]?.index ?? notice.length;
      return [name, notice.slice(index + line.length, end).trim().length];
    }),
  );
}

it('the command carries the licence of each package that is inside it, in full', () => {
  const notice = told(read('THIRD-PARTY.txt'), /^(\S+) \d\S* \([\w.-]+\)$/gmu);
  expect([...notice.keys()]).toEqual(
    expect.arrayContaining(['sirv', '@polka/url', 'mrmime', 'totalist', 'yaml', 'valibot']),
  );
  for (const [name, length] of notice) expect(length, name).toBeGreaterThan(500);
});

it('the page carries those of the worker that serves it offline, too', () => {
  const notice = told(read('web/THIRD-PARTY.md'), /^## (\S+) - \S+ \([\w.-]+\)$/gmu);
  const scripts = readdirSync(path.join(ROOT, 'dist/web')).filter((file) => file.endsWith('.js'));
  const parts = scripts.flatMap((file) => [
    ...read(`web/${file}`).matchAll(/"workbox:([a-z-]+):/gu),
  ]);
  expect(parts.length).toBeGreaterThan(2);
  for (const [, part] of parts) expect([...notice.keys()]).toContain(`workbox-${part}`);
  expect([...notice.keys()]).toContain('vite-plugin-pwa');
  for (const [name, length] of notice) expect(length, name).toBeGreaterThan(500);
});
