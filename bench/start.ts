/**
 * What the built command takes of the processor from nothing to its answer, against a Node that does
 * nothing: `node scripts/run.mjs bench/start.ts [times]`. Prints medians; it is no test.
 */
import { spawnSync } from 'node:child_process';
import path from 'node:path';

const [times = '25'] = process.argv.slice(2);
const CLI = path.resolve('dist/cli.cjs');
const KESTREL = 'trains/kestrel-three-speed.train.yaml';
const CALLS: readonly (readonly [name: string, args: readonly string[], wanted?: number])[] = [
  ['node -e 0', ['-e', '0']],
  ['holdturn --version', [CLI, '--version'], 1.3],
  ['holdturn flow', [CLI, 'flow', KESTREL, '--range', 'D', '--gear', '1'], 1.7],
  ['holdturn check', [CLI, 'check', KESTREL]],
  ['holdturn chart', [CLI, 'chart', KESTREL]],
  ['holdturn suspects', [CLI, 'suspects', KESTREL, 'bench/seen.yaml']],
];

// In turn, so that what else the machine does falls upon all alike.
const taken = CALLS.map(() => [] as number[]);
for (let k = 0; k < Number(times); k++) {
  CALLS.forEach(([, args], c) => {
    taken[c]?.push(processorMs(args));
  });
}
const medians = taken.map((all) => all.toSorted((a, b) => a - b)[all.length >> 1] ?? Number.NaN);
CALLS.forEach(([name, , wanted], c) => {
  const ms = medians[c] ?? Number.NaN;
  const ratio = ms / (medians[0] ?? Number.NaN);
  const hoped = wanted === undefined ? '' : `, ${wanted} wanted`;
  console.log(
    `${name.padEnd(20)} ${ms.toFixed(1).padStart(7)} ms  ${ratio.toFixed(2)} times${hoped}`,
  );
});

// User's and system's, of all its threads: what else the machine does is left out. Node does not
// tell it of its children, and bash does.
function processorMs(args: readonly string[]): number {
  const timed = 'TIMEFORMAT="%3U %3S"; time "$0" "$@" >/dev/null 2>&1';
  const { status, stderr } = spawnSync('bash', ['-c', timed, process.execPath, ...args]);
  if (status !== 0) throw new Error(`${args.join(' ')}: exit ${status}`);
  const [user = Number.NaN, system = Number.NaN] = stderr.toString().trim().split(' ').map(Number);
  return 1000 * (user + system);
}
