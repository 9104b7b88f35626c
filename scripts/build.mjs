/**
 * Builds dist/. `node scripts/build.mjs command` builds the command and the screen that it
 * serves; with no argument the library and its declarations too.
 */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { licences } from './licences.mjs';
import { readMessages } from './messages.mjs';
import { pruneTypes } from './declarations.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
process.chdir(root);

const shared = {
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  sourcemap: false,
  legalComments: 'none',
  logLevel: 'warning',
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

try {
  await buildCommand();
  await buildScreen();
  if (process.argv[2] !== 'command') await buildLibrary();
} catch (error) {
  // esbuild has told its own errors, with their places.
  if (!(error instanceof Error && 'errors' in error)) console.error(error);
  process.exitCode = 1;
}

// The command is one file, dist/command.cjs, with the packages inside: it runs without
// node_modules. dist/cli.cjs starts it, with the code that a first run here compiled.
async function buildCommand() {
  const { outputFiles, metafile } = await build({
    ...shared,
    format: 'cjs',
    entryPoints: { command: 'src/doors/cli/main.ts' },
    outdir: 'dist',
    outExtension: { '.js': '.cjs' },
    minify: true,
    keepNames: false,
    // The package gives Node its older module form, which cannot be trimmed.
    alias: { yaml: './node_modules/yaml/browser/index.js' },
    define: { 'import.meta.url': 'importMetaUrl' },
    banner: { js: 'const importMetaUrl=require("node:url").pathToFileURL(__filename).href;' },
    plugins: [readMessages, runsNothing],
    metafile: true,
    write: false,
  });
  for (const file of outputFiles) place(file.path, inAscii(file.text));
  const { version } = JSON.parse(fs.readFileSync('package.json', 'utf8'));
  const launch = fs.readFileSync('scripts/launch.cjs', 'utf8');
  place(
    'dist/cli.cjs',
    launch.replace("'VERSION'", () => JSON.stringify(version)),
    0o755,
  );
  const told = licences(packagesOf(Object.keys(metafile.inputs))).map((its) => {
    return `${its.name} ${its.version} (${its.license})\n\n${its.text}`;
  });
  place('dist/THIRD-PARTY.txt', told.join('\n'));
  fs.rmSync('dist/command.cjs.compiled', { force: true });
  const usual = ['flow', 'trains/kestrel-three-speed.train.yaml', '--range', 'L', '--gear', '1'];
  const compile = ['scripts/compile.cjs', 'dist/command.cjs.compiled', ...usual];
  execFileSync(process.execPath, compile, { stdio: ['ignore', 'ignore', 'inherit'] });
}

// A text of ASCII alone is read and kept in half the time and half the memory.
function inAscii(text) {
  // eslint-disable-next-line no-control-regex
  const other = /[^\x00-\x7f]/gu;
  return text.replaceAll(other, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

// The screen is static files, dist/web, for any web host. Its builder is loaded here because
// it takes longer than the command's whole build.
async function buildScreen() {
  const { build: buildSite } = await import('vite');
  await buildSite({ logLevel: 'warn' });
  tellWorkerLicences();
}

async function buildLibrary() {
  await build({
    ...shared,
    entryPoints: { index: 'src/index.ts' },
    outdir: 'dist',
    packages: 'external',
  });
  fs.rmSync('dist/types', { recursive: true, force: true });
  const tsc = ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.types.json'];
  execFileSync(process.execPath, tsc, { stdio: 'inherit' });
  pruneTypes('dist/types');
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

// The builder of the screen tells the licences of what it bundles, but not of the worker that
// serves the page offline, which another one makes, nor of what it puts into the page for it.
function tellWorkerLicences() {
  const web = 'dist/web';
  const scripts = fs.readdirSync(web).filter((file) => file.endsWith('.js'));
  const texts = scripts.map((file) => fs.readFileSync(path.join(web, file), 'utf8'));
  const parts = texts.flatMap((text) => [...text.matchAll(/"workbox:([a-z-]+):/g)]);
  const folders = parts.map(([, part]) => `node_modules/workbox-${part}`);
  const told = licences([...folders, 'node_modules/vite-plugin-pwa']).map((its) => {
    return `\n## ${its.name} - ${its.version} (${its.license})\n\n${its.text}`;
  });
  fs.appendFileSync(path.join(web, 'THIRD-PARTY.md'), told.join(''));
}
