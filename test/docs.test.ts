import fs from 'node:fs';
import { execFileSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build } from 'esbuild';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ask } from '../src/doors/cli/asked.ts';
import { EXAMPLES } from '../src/command/typed/groups.ts';
import { blocksOf, follow, programsOf, requoted } from './handbook.ts';
import { ROOT } from './sources.ts';

const PAGES = [
  'README.md',
  ...fs.readdirSync(path.join(ROOT, 'docs')).map((file) => `docs/${file}`),
]
  .filter((file) => file.endsWith('.md'))
  .toSorted();

const EXTERNAL = Object.keys(
  JSON.parse(fs.readFileSync(path.join(ROOT, 'package.json'), 'utf8')).dependencies,
);

const textOf = (page: string) => fs.readFileSync(path.join(ROOT, page), 'utf8');

let folder = '';
const home = process.cwd();

// A reader's folder, as the checkout is, but for what the page has them write.
beforeEach(() => {
  folder = fs.mkdtempSync(path.join(tmpdir(), 'holdturn-docs-'));
  fs.symlinkSync(path.join(ROOT, 'trains'), path.join(folder, 'trains'));
  fs.copyFileSync(path.join(ROOT, 'experience.yaml'), path.join(folder, 'experience.yaml'));
  process.chdir(folder);
});

afterEach(() => {
  process.chdir(home);
  fs.rmSync(folder, { recursive: true });
});

describe('what a page tells its reader to do can be done, and answers as quoted', () => {
  it.each(PAGES)('%s', async (page) => {
    const text = textOf(page);
    if (process.env['UPDATE']) {
      await follow(blocksOf(text).filter(({ language }) => language === 'yaml'));
      fs.writeFileSync(path.join(ROOT, page), await requoted(text));
      return;
    }
    expect(await follow(blocksOf(text))).toEqual([]);
  });

  it('there are pages of each form of file, each with something to do', () => {
    expect(PAGES.length).toBeGreaterThanOrEqual(8);
    const idle = PAGES.filter((page) => blocksOf(textOf(page)).length < 2);
    expect(idle).toEqual([]);
  });
});

const TEXTS = {
  kestrel: textOf('trains/kestrel-three-speed.train.yaml'),
  experience: textOf('experience.yaml'),
};

describe('a program of a page prints what stands behind its lines', () => {
  it.each(programsOf(textOf('docs/program.md'), TEXTS))('line $line', async (program) => {
    expect(program.prints).not.toBe('');
    // Beside the packages, so that it finds them.
    const bundle = path.join(ROOT, `node_modules/.cache/holdturn/page-${process.pid}.mjs`);
    await build({
      stdin: { contents: program.source, loader: 'ts', resolveDir: ROOT },
      alias: { holdturn: path.join(ROOT, 'src/index.ts') },
      outfile: bundle,
      bundle: true,
      format: 'esm',
      platform: 'node',
      external: EXTERNAL,
    });
    const printed = execFileSync(process.execPath, [bundle], { encoding: 'utf8' });
    fs.rmSync(bundle);
    expect(printed).toBe(program.prints);
  });
});

describe('the reading finds', () => {
  it.each([
    ['a command that is refused', '```sh\n./holdturn flow nothing.train.yaml\n```', 'line 1: '],
    ['a command of nobody', '```sh\nmake tea\n```', 'no command of ours'],
    ['a file without a name', '```yaml\nD 1: drives\n```', 'a file without a name'],
    [
      'a wrong quotation',
      '```sh\n./holdturn --version\n```\n```text\n9.9.9\n```',
      'nobody answers',
    ],
    ['a block that nobody reads', '```\nflow\n```', 'no language'],
  ])('%s', async (_, page, fault) => {
    expect((await follow(blocksOf(page))).join()).toContain(fault);
  });
});

it('each example of help can be typed, with the files of the pages', async () => {
  const blocks = PAGES.flatMap((page) => blocksOf(textOf(page)));
  expect(await follow(blocks.filter(({ language }) => language === 'yaml'))).toEqual([]);
  await ask('job new unit-7.job.yaml --unit "unit 7" --by TW');
  const typed = Object.values(EXAMPLES).filter((example) => !example.startsWith('screen'));
  const answers = await Promise.all(
    typed.map(async (example) => ({ example, ...(await ask(example)) })),
  );
  expect(answers.filter(({ exit }) => exit > 1)).toEqual([]);
});
