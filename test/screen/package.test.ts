import { execFileSync, spawnSync } from 'node:child_process';
import {
  closeSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, it } from 'vitest';
import { programsOf } from '../handbook.ts';
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

// As a program of somebody's own finds it, without the types of a browser, of Node or of anything
// that the package needs to run; then with what it needs, and nothing else.
it('each program of the handbook compiles strictly in an empty folder, and prints what it says', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'holdturn-package-'));
  const home = path.join(folder, 'node_modules/holdturn');
  mkdirSync(home, { recursive: true });
  const pack = ['pack', '--ignore-scripts', '--pack-destination', folder];
  execFileSync('npm', pack, { cwd: ROOT, stdio: 'ignore' });
  const packed = readdirSync(folder).find((file) => file.endsWith('.tgz')) ?? '';
  execFileSync('tar', ['-xzf', path.join(folder, packed), '--strip-components=1', '-C', home]);
  const inPackage = (file: string) => readFileSync(path.join(home, file), 'utf8');
  const programs = programsOf(inPackage('docs/program.md'), {
    kestrel: inPackage('trains/kestrel-three-speed.train.yaml'),
    experience: inPackage('experience.yaml'),
  });
  const compilerOptions = {
    target: 'ES2022',
    lib: ['ES2022'],
    module: 'NodeNext',
    types: [],
    strict: true,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    skipLibCheck: false,
  };
  const write = (name: string, text: string) => writeFileSync(path.join(folder, name), text);
  write('package.json', '{ "type": "module" }');
  const include = ['*.ts'];
  write('tsconfig.json', JSON.stringify({ compilerOptions, include }));
  write('all.ts', "import * as holdturn from 'holdturn';\n\nvoid holdturn;\n");
  programs.forEach(({ source }, k) => write(`program${k}.ts`, `${CONSOLE}${source}`));
  const tsc = path.join(ROOT, 'node_modules/typescript/bin/tsc');
  const { stdout, status } = spawnSync(process.execPath, [tsc, '-p', folder], { encoding: 'utf8' });
  expect([stdout, status]).toEqual(['', 0]);
  for (const needed of Object.keys(JSON.parse(inPackage('package.json')).dependencies)) {
    const place = path.join(folder, 'node_modules', needed);
    mkdirSync(path.dirname(place), { recursive: true });
    symlinkSync(path.join(ROOT, 'node_modules', needed), place);
  }
  expect(programs.length).toBeGreaterThan(5);
  for (const [k, { prints }] of programs.entries()) {
    const ran = spawnSync(process.execPath, [`program${k}.js`], { cwd: folder, encoding: 'utf8' });
    expect([ran.stderr, ran.stdout]).toEqual(['', prints]);
  }
  rmSync(folder, { recursive: true });
});

// Of Node's and of browsers' alike.
const CONSOLE = 'declare const console: { log(...told: readonly unknown[]): void };\n';

it('the command tells its version as it tells it in Spanish, and says so where it cannot', () => {
  const cli = path.join(ROOT, 'dist/cli.cjs');
  const printed = (...args: string[]) =>
    spawnSync(process.execPath, [cli, ...args], { encoding: 'utf8' }).stdout;
  const { version } = JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8'));
  expect(printed('--version')).toBe(`${version}\n`);
  expect(printed('--lang', 'es', '--version')).toBe(`${version}\n`);
  const full = openSync('/dev/full', 'w');
  for (const args of [['--version'], ['flow', KESTREL]]) {
    const stdio = ['ignore', full, 'pipe'] as const;
    const run = spawnSync(process.execPath, [cli, ...args], {
      encoding: 'utf8',
      stdio: [...stdio],
    });
    expect([run.status, run.stderr]).toEqual([
      2,
      expect.stringMatching(/^holdturn: cannot print/u),
    ]);
  }
  closeSync(full);
});

it('a verb that answers at once says from its own file what the whole command says', () => {
  const cli = path.join(ROOT, 'dist/cli.cjs');
  const run = (...args: string[]) => {
    const { stdout, stderr, status } = spawnSync(process.execPath, [cli, ...args], {
      encoding: 'utf8',
    });
    return { stdout, stderr, status };
  };
  const asked = [
    [0, 'flow', KESTREL, '--range', 'D', '--gear', '1'],
    [0, 'chart', KESTREL, '--json'],
    [0, 'hand', KESTREL, '--one-way'],
    [0, 'flow', '--help'],
    [2, 'flow', KESTREL, '--gaer', '1'],
    [2, 'hand', `${KESTREL}.none`],
  ] as const;
  for (const [status, ...args] of asked) {
    for (const language of ['en', 'es']) {
      // Only where the verb is the first word is its own file started.
      const quick = run(...args, '--lang', language);
      expect(quick).toEqual(run('--lang', language, ...args));
      expect([quick.status, quick.stdout + quick.stderr]).toEqual([
        status,
        expect.stringMatching(/./u),
      ]);
    }
  }
});

const KESTREL = path.join(ROOT, 'trains/kestrel-three-speed.train.yaml');
