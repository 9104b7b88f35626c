import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, it } from 'vitest';
import { ask, words as wordsOf } from '../../doors/cli/asked.ts';
import { DISK } from './disk.ts';
import { run } from '../../doors/cli/run.ts';
import { waiting } from './waiting.ts';

it('speaks while the thread that answers is busy, and tells how far it is', () => {
  const place = path.join(fs.mkdtempSync(path.join(os.tmpdir(), 'holdturn-waiting-')), 'told');
  const file = fs.openSync(place, 'w+');
  const { tell, stop } = waiting({ plain: 'after SECONDS s', counted: 'DONE of ALL' }, file, 5);
  const busyUntil = (pattern: RegExp) => {
    while (!pattern.test(fs.readFileSync(place, 'utf8'))) {
      // This thread never comes to its own events.
    }
  };
  busyUntil(/^after \d+ s\n/u);
  tell(3, 7);
  busyUntil(/^3 of 7\n/mu);
  stop();
});

it.each([
  ['faults trains/wren-plain-set.train.yaml'],
  ['suspects trains/wren-plain-set.train.yaml empty'],
  ['sheet diagnosis trains/wren-plain-set.train.yaml --json'],
])('%s is waited for with a line', async (typed) => {
  const told: string[] = [];
  const counts: [number, number][] = [];
  let stopped = 0;
  const exit = await run({
    args: wordsOf(typed),
    env: {},
    terminal: false,
    ...DISK,
    read: (file) => (file === 'empty' ? '# nothing\n' : DISK.read(file)),
    waiting: ({ plain, counted }) => {
      told.push(plain, counted);
      return { tell: (...now) => void counts.push(now), stop: () => stopped++ };
    },
    out: () => {},
    err: () => {},
  });
  expect(exit).toBe(0);
  expect(told[0]).toBe('holdturn: still at it, after SECONDS s; Ctrl-C stops it');
  expect(told[1]).toBe('holdturn: DONE of ALL done, after SECONDS s; Ctrl-C stops it');
  expect(stopped).toBe(told.length / 2);
  // A sheet counts its sheets, and what one of them takes long for says nothing beside.
  if (typed.startsWith('sheet')) expect(stopped).toBe(1);
  if (typed.startsWith('faults')) {
    const [, all = 0] = counts.at(-1) ?? [];
    expect(counts.map(([done]) => done)).toEqual(Array.from({ length: all }, (_, k) => k + 1));
  }
});

it('a table of faults that nobody would read is refused, with the way out', async () => {
  const brakes = Array.from({ length: 60 }, (_, k) => `  d${k}: { brake: m${k} }`).join('\n');
  const gears = Array.from({ length: 60 }, (_, k) => `"${k}": []`).join(', ');
  const head = 'holdturn: 1\ninput: a\noutput: b\nsets: { s: { sun: 30, ring: 66 } }\n';
  const end = `devices:\n${brakes}\nranges: { D: { ${gears} } }\n`;
  const stdin = `${head}joined: { a: [s.sun], b: [s.carrier] }\n${end}`;
  const { err, exit } = await ask('faults - --pairs', { stdin });
  expect([exit, err]).toEqual([
    2,
    'holdturn: too many to try: 8001 faults in 60 gears; name some with --only, or leave out --pairs\n',
  ]);
});
