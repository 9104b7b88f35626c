import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { applyFault, faultNamed } from '../src/engine/faults/index.ts';
import { flow, type Working } from '../src/engine/flow/index.ts';
import { toText } from '../src/engine/linear/index.ts';
import { type Train, appliedIn } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { ROOT } from './sources.ts';

/** What `trains/NAME.expected.yaml` says of one gear; ratios as "p/q". */
interface Expected {
  readonly drive: Working['state'];
  readonly ratio?: string;
  readonly coast: Working['state'];
  readonly 'coast ratio'?: string;
  readonly 'engine braking': boolean;
}

type Ranges = Readonly<Record<string, Readonly<Record<string, Expected>>>>;

const FOLDER = path.join(ROOT, 'trains');
const NAMES = fs
  .readdirSync(FOLDER)
  .filter((file) => file.endsWith('.train.yaml'))
  .map((file) => file.slice(0, -'.train.yaml'.length));

it('there are at least twelve, and each has its expected answers', () => {
  expect(NAMES.length).toBeGreaterThanOrEqual(12);
  const answered = fs.readdirSync(FOLDER).filter((file) => file.endsWith('.expected.yaml'));
  expect(answered).toEqual(NAMES.map((name) => `${name}.expected.yaml`));
});

describe.each(NAMES)('%s', (name) => {
  const { train, problems } = readTrain(text(`${name}.train.yaml`));
  const expected = parse(text(`${name}.expected.yaml`)) as {
    readonly ranges: Ranges;
    readonly faults?: Readonly<Record<string, Ranges>>;
  };

  it('reads without a problem', () => {
    expect(problems).toEqual([]);
  });

  it('says what it teaches', () => {
    expect(train?.about.length).toBeGreaterThan(200);
  });

  it('works as expected in every gear', () => {
    expect(workings(train as Train)).toEqual(expected.ranges);
  });

  it.each(Object.entries(expected.faults ?? {}))('with %s', (fault, ranges) => {
    expect(workings(spoilt(train as Train, fault))).toEqual(ranges);
  });
});

function text(file: string): string {
  return fs.readFileSync(path.join(FOLDER, file), 'utf8');
}

/** Every gear of every range, in the form of the expected answers. */
function workings(train: Train): Ranges {
  const ranges = train.ranges.map(({ name, gears }) => {
    return [
      name,
      Object.fromEntries(gears.map((gear) => [gear.name, working(train, appliedIn(train, gear))])),
    ];
  });
  return Object.fromEntries(ranges) as Ranges;
}

function working(train: Train, on: readonly string[]): Expected {
  const { drive, coast } = flow(train, on);
  return {
    drive: drive.state,
    ...(drive.ratio && { ratio: toText(drive.ratio) }),
    coast: coast.state,
    ...(coast.ratio && { 'coast ratio': toText(coast.ratio) }),
    'engine braking': coast.engineBraking,
  };
}

function spoilt(train: Train, fault: string): Train {
  const named = faultNamed(fault, train);
  if ('unknown' in named) throw new Error(`${fault}: no such ${named.unknown}`);
  return applyFault(train, named.fault);
}
