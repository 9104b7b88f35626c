/**
 * Sheets on paper, as a person prints them: a process of its own for each, with the answers to be
 * found, the typesetter and its fonts to be loaded, and the file to be written.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

const RUNS = 7;
const SETS = ['avocet-four-speed', 'kestrel-three-speed', 'heron-eight-speed'];

export function sheets(): void {
  if (!existsSync('dist/cli.cjs')) {
    console.log('\nSheets: first npm run build');
    return;
  }
  console.log(`\nSheet sets as PDF (medians of ${RUNS} processes; hoped for: 12 pages under 2 s)`);
  const file = path.join(tmpdir(), `sheets-${process.pid}.pdf`);
  for (const train of SETS) {
    const typed = ['sheet', 'set', `trains/${train}.train.yaml`, '-o', file];
    const times: number[] = [];
    let told = '';
    for (let i = 0; i < RUNS; i++) {
      const began = performance.now();
      told = spawnSync(process.execPath, ['dist/cli.cjs', ...typed], { encoding: 'utf8' }).stdout;
      times.push(performance.now() - began);
    }
    const [pages = '?'] = /\d+(?= page)/u.exec(told) ?? [];
    const median = times.toSorted((a, b) => a - b)[Math.floor(RUNS / 2)] ?? Number.NaN;
    console.log(
      `  ${train.padEnd(22)} ${pages.padStart(3)} pages ${median.toFixed(0).padStart(6)} ms`,
    );
  }
  rmSync(file, { force: true });
}
