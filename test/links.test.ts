import { existsSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { readSources, ROOT, type Source } from './sources.ts';

const pages = readSources().filter((source) => source.path.endsWith('.md'));

describe('links', () => {
  it.each(pages)('$path leads to files that are there, and to headings that they have', (page) => {
    expect(broken(page, pages)).toEqual([]);
  });

  it('a link that leads nowhere is found', () => {
    const page = {
      path: 'docs/a.md',
      text: '# A page\n[gone](gone.md) [no such heading](#b) [home](../ARCHITECTURE.md) [a](#a-page) [x](https://a.org)',
    };
    expect(broken(page, [...pages, page])).toEqual(['gone.md', '#b']);
  });
});

function broken(page: Source, all: readonly Source[]): string[] {
  return [...page.text.matchAll(/\]\((?!https?:)([^)\s]+)\)/g)]
    .map((match) => match[1] ?? '')
    .filter((link) => {
      const [file = '', heading] = link.split('#');
      const target = file === '' ? page.path : path.posix.join(path.posix.dirname(page.path), file);
      if (file !== '' && !existsSync(path.join(ROOT, target))) return true;
      return heading !== undefined && !headingsOf(all, target).includes(heading);
    });
}

// The names that a page's headings are reached by: lower case, hyphens for spaces, no other signs.
function headingsOf(all: readonly Source[], target: string): string[] {
  const text = all.find((source) => source.path === target)?.text ?? '';
  return [...text.matchAll(/^#+ (.*)$/gm)].map(([, title = '']) =>
    title
      .toLowerCase()
      .replaceAll(/[^\p{L}\p{N} _-]/gu, '')
      .replaceAll(' ', '-'),
  );
}
