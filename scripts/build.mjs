/**
 * Builds dist/. `node scripts/build.mjs command` builds the command and the screen that it
 * serves; with no argument the library and its declarations too.
 */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { buildCommand } from './command.mjs';
import { licences } from './licences.mjs';
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

try {
  await buildCommand();
  await buildScreen();
  if (process.argv[2] !== 'command') await buildLibrary();
} catch (error) {
  // esbuild has told its own errors, with their places; the builder of the screen tells none.
  if (!(error instanceof Error && 'warnings' in error)) console.error(error);
  process.exitCode = 1;
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
