/**
 * Runs a TypeScript file on a Node that cannot: `node scripts/run.mjs FILE [arguments]`, from
 * the root of the checkout, where FILE's own relative paths start too.
 */
import { mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const [file, ...rest] = process.argv.slice(2);
if (file === undefined) throw new Error('say which file to run: node scripts/run.mjs FILE');

// Beside the packages, so that the bundle finds them; a number of its own, so that two may run.
const folder = path.resolve('node_modules/.cache/holdturn');
const bundle = path.join(folder, `${path.parse(file).name}-${process.pid}.mjs`);
mkdirSync(folder, { recursive: true });
await build({
  entryPoints: [file],
  outfile: bundle,
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  packages: 'external',
  sourcemap: 'inline',
  logLevel: 'warning',
});
process.argv = [process.argv[0], path.resolve(file), ...rest];
process.setSourceMapsEnabled(true);
process.on('exit', () => rmSync(bundle, { force: true }));
await import(pathToFileURL(bundle).href);
