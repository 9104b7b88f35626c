/**
 * Builds dist/. `node scripts/build.mjs command` builds only the command; with no argument the
 * library and its declarations too.
 */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

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

try {
  await buildCommand();
  if (process.argv[2] !== 'command') await buildLibrary();
} catch (error) {
  // esbuild has told its own errors, with their places.
  if (!(error instanceof Error && 'errors' in error)) console.error(error);
  process.exitCode = 1;
}

// The command is one file that holds what every run needs, and pieces in dist/cli/ that load
// when an `import()` asks for them. Packages are inside: the command runs without node_modules.
async function buildCommand() {
  const { outputFiles, metafile } = await build({
    ...shared,
    entryPoints: { cli: 'src/doors/cli/main.ts' },
    outdir: 'dist',
    chunkNames: 'cli/[name]-[hash]',
    splitting: true,
    minifySyntax: true,
    // The package gives Node its older module form, which cannot be trimmed, nor split by name.
    alias: { yaml: './node_modules/yaml/browser/index.js' },
    metafile: true,
    write: false,
    // Packages in the older module form ask for Node's own modules by `require`.
    banner: {
      js: "import{createRequire as requireFrom}from'node:module';const require=requireFrom(import.meta.url);",
    },
  });
  // The pieces first and cli.js last, each by a rename: whoever runs meanwhile reads whole files.
  const files = outputFiles.toSorted((a, b) => depth(b.path) - depth(a.path));
  for (const file of files) place(file.path, file.text);
  removeOthers('dist/cli', new Set(files.map((file) => path.basename(file.path))));
  place('dist/THIRD-PARTY.txt', licences(Object.keys(metafile.inputs)));
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
}

function place(file, text) {
  const command = path.basename(file) === 'cli.js';
  const whole = command && !text.startsWith('#!') ? `#!/usr/bin/env node\n${text}` : text;
  const draft = `${file}.${process.pid}`;
  fs.mkdirSync(path.dirname(file), { recursive: true });
  fs.writeFileSync(draft, whole);
  if (command) fs.chmodSync(draft, 0o755);
  fs.renameSync(draft, file);
}

function removeOthers(folder, kept) {
  if (!fs.existsSync(folder)) return;
  for (const name of fs.readdirSync(folder)) {
    if (!kept.has(name)) fs.rmSync(path.join(folder, name));
  }
}

// The licences of the packages that are inside the command, as they ask.
function licences(inputs) {
  const folder = /^node_modules\/(?:@[^/]+\/)?[^/]+/;
  const packages = new Set(inputs.flatMap((input) => folder.exec(input)?.[0] ?? []));
  return [...packages].toSorted().map(licence).join('\n');
}

function licence(folder) {
  const { name, version, license } = JSON.parse(fs.readFileSync(`${folder}/package.json`, 'utf8'));
  const file = fs.readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  const text = file ? fs.readFileSync(path.join(folder, file), 'utf8') : '';
  return `${name} ${version} (${license})\n\n${text}`;
}

function depth(file) {
  return file.split(path.sep).length;
}
