import { readFileSync } from 'node:fs';
import path from 'node:path';
import { faultMatrix } from '../src/engine/faults/index.ts';
import { fraction } from '../src/engine/linear/index.ts';
import { marginsOf } from '../src/engine/margin/index.ts';
import { plan } from '../src/engine/plan/index.ts';
import type { Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { limitsOf } from '../src/shop/capacity/index.ts';

/** Faults, the plan and the margins of the eight-speed, each asked once; the processor's time. */
export function eightSpeed(): void {
  const file = 'trains/heron-eight-speed.train.yaml';
  const { train } = readTrain(readFileSync(path.resolve(file), 'utf8')) as { train: Train };
  console.log('\nThe eight-speed, one run each in a warm process');
  const single = timed(() => faultMatrix(train));
  said(`${single.result.rows.length} single faults, ${gearsOf(train)} gears, both ways`, single.ms);
  const double = timed(() => faultMatrix(train, { pairs: true }));
  const many = double.result.rows.length;
  const each = `${((1000 * double.ms) / many).toFixed(0)} us a fault`;
  said(`${many} single and double faults, ${each}`, double.ms, (many * 800) / 1648);
  const build = timed(() => plan(train));
  said(`the plan of its ${train.teardown?.length} parts`, build.ms, 2000);
  const pressures = Array.from({ length: 50 }, (_, k) => fraction(400 + 20 * k));
  const engine = { engineNm: fraction(160), stallRatio: fraction(19, 10) };
  const rounds = [1, 2, 3, 4, 5].map(() => {
    return timed(() => marginsOf(train, limitsOf(train)).over(pressures, engine)).ms;
  });
  const [, , middle = Number.NaN] = rounds.toSorted((x, y) => x - y);
  said('the margins at 50 pressures, the middle of 5', middle, 100);
}

function gearsOf(train: Train): number {
  return train.ranges.flatMap(({ gears }) => gears).length;
}

function timed<Result>(ask: () => Result): { readonly result: Result; readonly ms: number } {
  const began = process.cpuUsage();
  const result = ask();
  const { user, system } = process.cpuUsage(began);
  return { result, ms: (user + system) / 1000 };
}

function said(what: string, ms: number, most?: number): void {
  const hoped =
    most === undefined ? '' : `  (${most} wanted: ${ms <= most ? 'reached' : 'MISSED'})`;
  console.log(`  ${what.padEnd(44)}${`${ms.toFixed(0)} ms`.padStart(16)}${hoped}`);
}
