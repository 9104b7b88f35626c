import { describe, expect, it } from 'vitest';
import { voiceOf } from '../src/telling/narrative/index.ts';
import { chart } from '../src/engine/chart/index.ts';
import { check } from '../src/engine/check/index.ts';
import { faultMatrix, everyFault } from '../src/engine/faults/index.ts';
import { flow } from '../src/engine/flow/index.ts';
import { marginsOf } from '../src/engine/margin/index.ts';
import { readExperience } from '../src/engine/experience/index.ts';
import { inquire } from '../src/engine/cause/index.ts';
import { gearsOf, type Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { gripsOf, limitsOf } from '../src/shop/capacity/index.ts';
import { questionsOf } from '../src/shop/lessons/index.ts';
import { chartSheet } from '../src/telling/sheets/index.ts';
import { readFileSync } from 'node:fs';

// What applies a device may come to stand elsewhere than in the gear: one function is asked.
describe('which devices are applied in a gear is asked of one function', () => {
  const reading = readTrain(readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8'));
  const { experience } = readExperience(readFileSync('experience.yaml', 'utf8'));
  const asked: Readonly<Record<string, (train: Train) => unknown>> = {
    flow: (train) => gearsOf(train).map(({ on }) => flow(train, on).drive.state),
    chart: (train) => chart(train).gears.length,
    check: (train) => check({ ...reading, train }),
    faults: (train) => faultMatrix(train, { only: everyFault(train).slice(0, 2) }).rows.length,
    capacity: (train) => marginsOf(train, limitsOf(train)),
    suspects: (train) => experience && inquire(train, experience, gripsOf(train)).tests.length,
    lesson: (train) => questionsOf(train, { seed: 1 }).length,
    'chart on paper': (train) => chartSheet(train, voiceOf('en')).title,
  };

  it.each(Object.entries(asked))('%s', (_, ask) => {
    const { train } = reading;
    if (!train) throw new Error('the train is no train');
    const readers = new Set<string>();
    const ranges = train.ranges.map(({ name, gears }) => ({
      name,
      gears: gears.map((gear) => ({
        name: gear.name,
        get on() {
          readers.add(readerIn(new Error().stack ?? ''));
          return gear.on;
        },
      })),
    }));
    ask({ ...train, ranges });
    expect([...readers]).toEqual(['engine/train/gears.ts']);
  });
});

// The file behind the getter's own line of the stack.
function readerIn(stack: string): string {
  const [, , reader = ''] = stack.split('\n');
  return /src\/(.*?\.tsx?)/u.exec(reader)?.[1] ?? reader;
}
