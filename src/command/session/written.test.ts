import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { ask, words } from '../../doors/cli/asked.ts';
import { DISK } from '../machine/disk.ts';
import { run } from '../../doors/cli/run.ts';

const KESTREL = fs.readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8');

// A folder with a train, a job of it, other names of both, and files of other kinds.
let folder: string;
const at = (name: string) => path.join(folder, name);
beforeEach(async () => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'holdturn-written-'));
  fs.writeFileSync(at('t'), KESTREL);
  await ask(`job new ${at('j')} --unit u --by TW --train ${at('t')}`);
  for (const one of ['t', 'j']) {
    fs.symlinkSync(one, at(`${one}-link`));
    fs.linkSync(at(one), at(`${one}-hard`));
  }
  fs.mkdirSync(at('sub'));
  fs.symlinkSync('nowhere', at('lost'));
});

describe('an answer never takes the place of what it was made from:', () => {
  it.each([
    ['draw t -o t'],
    ['draw t -o t-link'],
    ['draw t -o t-hard'],
    ['draw t -o sub/../t'],
    ['draw t-link -o t'],
    ['sheet chart t -o t'],
    ['sheet chart t -o t-hard'],
    ['sheet job t --job j -o j'],
    ['sheet job t --job j -o j-link'],
    ['sheet job t --job j -o j-hard'],
    ['sheet job t --job j-hard -o ./j'],
    ['sheet diagnosis t --seen s -o s'],
  ])('%s', async (typed) => {
    fs.writeFileSync(at('s'), 'D 1: drives\n');
    const before = contents();
    const named = typed.replaceAll(/(?<= )(?=(?:\.\/|sub\/|[tjs](?:-\w+)?(?: |$)))/g, `${folder}/`);
    const { err, out, exit } = await ask(named);
    expect([exit, out]).toEqual([2, '']);
    expect(err).toMatch(/would be lost: give another name behind -o\n$/u);
    expect(contents()).toEqual(before);
  });
});

describe('an answer never takes the place of a file of another kind:', () => {
  it.each([
    ['draw', 'a job', 'holdturn job: 1\n'],
    ['draw', 'a PDF', '%PDF-1.7\n'],
    ['sheet chart', 'a train', KESTREL],
    ['sheet chart', 'a drawing', '<svg xmlns="http://www.w3.org/2000/svg"/>'],
  ])('%s over %s', async (verb, _, text) => {
    fs.writeFileSync(at('out'), text);
    const { err, exit } = await ask(`${verb} ${at('t')} -o ${at('out')}`);
    expect(exit).toBe(2);
    expect(err).toMatch(/is there already and is no (?:SVG|PDF) file; it was left as it is/u);
    expect(fs.readFileSync(at('out'), 'utf8')).toBe(text);
  });

  it('but of its own, or of an empty one', async () => {
    fs.writeFileSync(at('out'), '');
    expect((await ask(`draw ${at('t')} -o ${at('out')}`)).exit).toBe(0);
    fs.writeFileSync(at('out'), '<?xml version="1.0"?>\n<!-- by hand -->\n<svg/>');
    expect((await ask(`draw ${at('t')} -o ${at('out')}`)).exit).toBe(0);
    expect((await ask(`sheet chart ${at('t')} -o ${at('a.typ')}`)).exit).toBe(0);
    expect((await ask(`sheet chart ${at('t')} -o ${at('a.typ')}`)).exit).toBe(0);
  });
});

describe('what goes wrong with files is said in words:', () => {
  it.each([
    ['check lost', 'lost is a link to nowhere, which is not there; mend the link'],
    ['draw t -o sub', 'is a directory'],
    ['check huge', 'too large: '],
    ['check /dev/zero', 'too large: '],
  ])('%s', async (typed, said) => {
    fs.writeFileSync(at('huge'), '');
    fs.truncateSync(at('huge'), 300 * 2 ** 20);
    const named = typed.replaceAll(/ (?=lost|t\b|sub|huge)/g, ` ${folder}/`);
    const { err, exit } = await ask(named);
    expect([exit, err]).toEqual([2, expect.stringContaining(said)]);
  });

  it('a full disk, under the answer and under standard output', async () => {
    const full = () => {
      throw Object.assign(new Error('no space left on device, write'), { code: 'ENOSPC' });
    };
    expect(await failing(`draw ${at('t')} -o ${at('x.svg')}`, { write: full })).toMatch(
      /the disk is full: .*x\.svg is not written whole; make room/u,
    );
    expect(await failing(`flow ${at('t')}`, { out: full })).toMatch(/cannot print \(ENOSPC\)/u);
    const ledger = { create: full, append: full, now: () => new Date(0) };
    expect(await failing(`job add ${at('j')} note x --by TW`, { ledger })).toMatch(
      /the disk is full/u,
    );
  });

  it('and a name that would move the cursor is shown', async () => {
    const { err } = await ask(`check "a\u001B[2Jb\u202Ec"`);
    expect(err).toContain('a\uFFFD[2Jb\uFFFDc');
    fs.writeFileSync(at('a\u001B[2Jb'), KESTREL);
    const { out } = await ask(`check "${at('a\u001B[2Jb')}"`);
    expect(out).toContain('a\uFFFD[2Jb is a train');
    const { out: drawn } = await ask(`draw ${at('t')} -o "${at('c\u001B[2Jd')}"`);
    expect(drawn).toContain('c\uFFFD[2Jd: ');
  });
});

function contents(): Record<string, string> {
  const names = fs
    .readdirSync(folder)
    .filter((name) => fs.statSync(at(name), { throwIfNoEntry: false })?.isFile());
  return Object.fromEntries(names.map((name) => [name, fs.readFileSync(at(name), 'latin1')]));
}

async function failing(typed: string, failure: object): Promise<string> {
  let err = '';
  const out = () => {};
  const exit = await run({
    args: words(typed),
    env: {},
    terminal: false,
    ...DISK,
    out,
    err: (text) => (err += text),
    ...failure,
  });
  expect(exit).toBe(2);
  return err;
}
