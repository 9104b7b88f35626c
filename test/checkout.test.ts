import { execFileSync, spawn, spawnSync } from 'node:child_process';
import * as fs from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ROOT } from './sources.ts';

// `./holdturn` in a checkout of its own, whose folder has spaces in its name, with a Node and an
// npm that only write down what they are asked.
let place: string;
let checkout: string;
let tools: string;

beforeEach(() => {
  place = fs.mkdtempSync(path.join(fs.realpathSync(tmpdir()), 'holdturn test '));
  checkout = path.join(place, 'a checkout');
  tools = path.join(place, 'tools');
  for (const folder of ['src', 'scripts', 'trains'])
    fs.mkdirSync(path.join(checkout, folder), { recursive: true });
  for (const file of ['holdturn', 'scripts/prepare.sh']) {
    fs.copyFileSync(path.join(ROOT, file), path.join(checkout, file));
  }
  for (const file of [
    'package.json',
    'package-lock.json',
    'tsconfig.json',
    'vite.config.ts',
    'scripts/build.mjs',
  ]) {
    fs.writeFileSync(path.join(checkout, file), '');
  }
  fs.mkdirSync(tools);
  for (const name of [
    'sh',
    'cat',
    'find',
    'ln',
    'mkdir',
    'mv',
    'readlink',
    'rm',
    'sleep',
    'touch',
  ]) {
    const found = execFileSync('/bin/sh', ['-c', `command -v ${name}`], { encoding: 'utf8' });
    fs.symlinkSync(found.trim(), path.join(tools, name));
  }
  tool('npm', 'echo "npm $1"; mkdir -p node_modules; touch node_modules/.package-lock.json');
  tool('node', NODE);
});

afterEach(() => fs.rmSync(place, { recursive: true, force: true }));

const NODE = `
case $1 in
  --version) echo v20.19.0 ;;
  scripts/build.mjs) echo "build $2"; echo built >dist/cli.cjs ;;
  *) echo "answer $# $2" ;;
esac`;

const COMMAND = './holdturn';

const FIRST = `holdturn: installing the packages that it needs (npm ci)
npm ci
holdturn: building the command
build command
`;

describe('./holdturn', () => {
  it('installs and builds once, says so on standard error, and then is quiet', () => {
    expect(run(['flow', 'a b'])).toEqual({ code: 0, out: 'answer 3 flow\n', err: FIRST });
    expect(run(['flow', 'a b'])).toEqual({ code: 0, out: 'answer 3 flow\n', err: '' });
  });

  it('builds again when a source is newer, or gone', () => {
    fs.writeFileSync(path.join(checkout, 'src/a.ts'), '');
    run();
    later('src/a.ts');
    expect(run().err).toBe('holdturn: building the command\nbuild command\n');
    fs.rmSync(path.join(checkout, 'src/a.ts'));
    later('src');
    expect(run().err).toBe('holdturn: building the command\nbuild command\n');
  });

  it('installs again when package-lock.json is newer', () => {
    run();
    later('package-lock.json');
    expect(run().err).toBe(FIRST);
  });

  it('runs from any folder and through links, absolute and relative', () => {
    run();
    fs.symlinkSync(path.join(checkout, 'holdturn'), path.join(place, 'far'));
    fs.symlinkSync('far', path.join(place, 'near'));
    for (const command of [path.join(place, 'near'), './near']) {
      expect(run(['x'], command, place)).toEqual({ code: 0, out: 'answer 2 x\n', err: '' });
    }
  });

  it('says what to install where Node or npm is missing, or Node is too old', () => {
    fs.rmSync(path.join(tools, 'npm'));
    expect(run()).toMatchObject({
      code: 3,
      out: '',
      err: expect.stringMatching(/npm is not installed/),
    });
    tool('node', 'echo v20.18.3');
    expect(run()).toMatchObject({
      code: 3,
      out: '',
      err: expect.stringMatching(/v20.18.3 is too old/),
    });
    fs.rmSync(path.join(tools, 'node'));
    expect(run()).toMatchObject({
      code: 3,
      out: '',
      err: expect.stringMatching(/Node 20.19 or newer/),
    });
  });

  it('does not answer from a build that failed, and tries it again', () => {
    tool('node', NODE.replace('echo built >dist/cli.cjs', 'exit 1'));
    expect(run()).toMatchObject({ code: 3, out: '', err: expect.stringMatching(/build failed/) });
    tool('node', NODE);
    expect(run().err).toBe('holdturn: building the command\nbuild command\n');
  });

  it('three at once install and build once', async () => {
    tool(
      'npm',
      'echo "npm $1"; sleep 1; mkdir -p node_modules; touch node_modules/.package-lock.json',
    );
    const told = await Promise.all([begin(), begin(), begin()]);
    expect(told.map(({ out }) => out)).toEqual(Array(3).fill('answer 1 \n'));
    const work = told
      .flatMap(({ err }) => err.split('\n'))
      .filter((line) => /^(npm|build)/.test(line));
    expect(work.toSorted()).toEqual(['build command', 'npm ci']);
  });

  it('clears a lock whose owner is gone, and leaves none', () => {
    const { pid } = spawnSync('/bin/sh', ['-c', ':']);
    fs.symlinkSync(String(pid), path.join(checkout, '.holdturn-lock'));
    expect(run().code).toBe(0);
    expect(fs.readdirSync(checkout).filter((name) => name.includes('lock'))).toEqual([
      'package-lock.json',
    ]);
  });
});

function tool(name: string, script: string): void {
  fs.writeFileSync(path.join(tools, name), `#!/bin/sh\n${script}\n`, { mode: 0o755 });
}

// Changed a minute after the last build began.
function later(file: string): void {
  const minute = fs.statSync(path.join(checkout, 'dist/.stamp')).mtimeMs / 1000 + 60;
  fs.utimesSync(path.join(checkout, file), minute, minute);
}

function run(args: string[] = [], command = COMMAND, cwd = checkout) {
  const done = spawnSync(command, args, { cwd, encoding: 'utf8', env: { PATH: tools } });
  return { code: done.status, out: done.stdout, err: done.stderr };
}

function begin(): Promise<{ out: string; err: string }> {
  const child = spawn(COMMAND, [], { cwd: checkout, env: { PATH: tools } });
  let out = '';
  let err = '';
  child.stdout.on('data', (text: Buffer) => (out += text.toString()));
  child.stderr.on('data', (text: Buffer) => (err += text.toString()));
  return new Promise((resolve) => child.on('close', () => resolve({ out, err })));
}
