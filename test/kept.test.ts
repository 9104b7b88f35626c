import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, expect, it, vi } from 'vitest';
import { expectKept } from './kept.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'holdturn-kept-'));
const at = (name: string) => path.join(folder, name);

afterEach(() => vi.unstubAllEnvs());

it('leaves the changed picture beside the kept one, says where, and takes it away again', () => {
  vi.stubEnv('UPDATE', '');
  writeFileSync(at('a.svg'), 'one');
  expect(() => expectKept(at('a.svg'), 'two')).toThrow('a.changed.svg is what is made now');
  expect([readFileSync(at('a.svg'), 'utf8'), readFileSync(at('a.changed.svg'), 'utf8')]).toEqual([
    'one',
    'two',
  ]);
  expectKept(at('a.svg'), 'ONE', (text) => text.toLowerCase());
  expect(existsSync(at('a.changed.svg'))).toBe(false);
});

it('keeps what is made now where it is told to, and a file that is missing is none that agrees', () => {
  vi.stubEnv('UPDATE', '');
  expect(() => expectKept(at('b.txt'), 'new')).toThrow('b.changed.txt');
  vi.stubEnv('UPDATE', '1');
  expectKept(at('b.txt'), 'new');
  expect(readFileSync(at('b.txt'), 'utf8')).toBe('new');
});

it('writes over nothing that differs only in what may differ', () => {
  vi.stubEnv('UPDATE', '1');
  const unstyled = (text: string) => text.replace(/<style>.*<[/]style>/su, '');
  writeFileSync(at('c.svg'), '<style>old</style>line');
  expectKept(at('c.svg'), '<style>new</style>line', unstyled);
  expect(readFileSync(at('c.svg'), 'utf8')).toBe('<style>old</style>line');
  expectKept(at('c.svg'), '<style>new</style>arc', unstyled);
  expect(readFileSync(at('c.svg'), 'utf8')).toBe('<style>new</style>arc');
});
