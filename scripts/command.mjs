import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { build } from 'esbuild';
import { licences } from './licences.mjs';
import { messageFiles, messagesBeside } from './messages.mjs';

const KESTREL = 'trains/kestrel-three-speed.train.yaml';

const ICU = '@formatjs/icu-messageformat-parser';

/** The verbs that answer at once, which have a file of their own: it is loaded in half the time. */
const AT_ONCE = ['flow', 'hand', 'chart'];

/**
 * The command is one file, dist/command.cjs, with the packages inside: it runs without
 * node_modules. dist/quick.cjs is the same for the verbs that answer at once, without the rest.
 * dist/cli.cjs starts the one or the other, with the code that a first run here compiled.
 */
export async function buildCommand() {
  const { version } = JSON.parse(fs.readFileSync('package.json', 'utf8'));
  const launch = fs.readFileSync('scripts/launch.cjs', 'utf8');
  const inputs = await bundle('command', []);
  await bundle('quick', [atOnce]);
  for (const { name, text } of await messageFiles()) place(`dist/${name}`, inAscii(text));
  place(
    'dist/cli.cjs',
    launch
      .replace("'VERSION'", () => JSON.stringify(version))
      .replace("['AT ONCE']", () => JSON.stringify(AT_ONCE)),
    0o755,
  );
  const told = licences(packagesOf(inputs)).map((its) => {
    return `${its.name} ${its.version} (${its.license})\n\n${its.text}`;
  });
  place('dist/THIRD-PARTY.txt', told.join('\n'));
  compile('quick', ['flow', KESTREL, '--range', 'L', '--gear', '1']);
  compile('command', ['suspects', KESTREL, '-'], 'D 2: slips\n');
}

// Returns the files that it is made of.
async function bundle(name, plugins) {
  const { outputFiles, metafile } = await build({
    bundle: true,
    format: 'cjs',
    platform: 'node',
    target: 'node20',
    entryPoints: { [name]: 'src/doors/cli/main.ts' },
    outdir: 'dist',
    outExtension: { '.js': '.cjs' },
    minify: true,
    legalComments: 'none',
    logLevel: 'warning',
    define: { 'import.meta.url': 'ownAddress.href' },
    // One function, as dist/cli.cjs takes it: a text that is put together there is copied whole.
    banner: { js: `(function(require,__filename,__dirname){${OWN_ADDRESS}` },
    footer: { js: '})' },
    alias: {
      // The package gives Node its older module form, which cannot be trimmed.
      yaml: path.resolve('node_modules/yaml/browser/index.js'),
      // The messages were read when the command was built.
      [ICU]: path.resolve('node_modules', ICU, 'no-parser.js'),
    },
    plugins: [...plugins, messagesBeside, runsNothing],
    metafile: true,
    write: false,
  });
  for (const file of outputFiles) place(file.path, inAscii(file.text));
  return Object.keys(metafile.inputs);
}

// Asked for seldom, and slow to make.
const OWN_ADDRESS =
  'const ownAddress={get href(){return require("node:url").pathToFileURL(__filename).href}};';

// Leaves out what only other verbs load.
const atOnce = {
  name: 'at-once',
  setup({ onResolve, onLoad }) {
    const kept = new Set(AT_ONCE.map((verb) => `./${verb}.ts`));
    onResolve({ filter: /^\.\// }, ({ kind, importer, path: file }) => {
      const door = /\/cli\/(?:run|main)\.ts$/.test(importer) && kind === 'dynamic-import';
      return door && !kept.has(file) ? { path: file, namespace: 'left-out' } : undefined;
    });
    onLoad({ filter: /./, namespace: 'left-out' }, ({ path: file }) => {
      return { contents: `throw new Error(${JSON.stringify(`${file} is not here`)});` };
    });
  },
};

// The argument reader could start other programs, and loads what it takes; ours has none.
const runsNothing = {
  name: 'runs-nothing',
  setup({ onResolve, onLoad }) {
    const filter = /^(node:)?child_process$/;
    onResolve({ filter }, () => ({ path: 'nothing', namespace: 'nothing' }));
    onLoad({ filter: /./, namespace: 'nothing' }, () => ({ contents: 'module.exports = {};' }));
  },
};

function compile(name, typed, input = '') {
  fs.rmSync(`dist/${name}.cjs.compiled`, { force: true });
  const words = ['scripts/compile.cjs', `dist/${name}.cjs.compiled`, ...typed];
  execFileSync(process.execPath, words, { input, stdio: ['pipe', 'ignore', 'inherit'] });
}

// A text of ASCII alone is read and kept in half the time and half the memory.
function inAscii(text) {
  // eslint-disable-next-line no-control-regex
  const other = /[^\x00-\x7f]/g;
  return text.replaceAll(other, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

// Each file is put there by a rename: whoever runs meanwhile reads whole files.
function place(file, text, mode = 0o644) {
  const draft = `${file}.${process.pid}`;
  fs.mkdirSync(path.dirname(file), { recursive: true });
  fs.writeFileSync(draft, text, { mode });
  fs.renameSync(draft, file);
}

// The packages that files of theirs stand in.
function packagesOf(files) {
  const folder = /^node_modules\/(?:@[^/]+\/)?[^/]+/;
  return files.flatMap((file) => folder.exec(file)?.[0] ?? []);
}
