import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { complaintSeen } from '../../src/engine/complaint/index.ts';
import { type Practice, readPractice } from '../../src/engine/practice/index.ts';
import {
  inquire,
  type Observation,
  readSeen,
  sightOf,
  type Test,
  testText,
} from '../../src/engine/suspects/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { diagnose } from '../../src/engine/triage/index.ts';

// The complaints of complaints.json from the first word on: the driver's own words, what was
// driven, and then whatever is proposed, answered as is expected. No test that a complaint
// forbids is ever proposed on the way, and none twice.
const here = (name: string) => readFileSync(new URL(name, import.meta.url), 'utf8');
const { trains, cases } = JSON.parse(here('complaints.json')) as {
  trains: Record<string, unknown>;
  cases: Complaint[];
};
const practice = readPractice(here('../../experience.yaml')).practice as Practice;

interface Complaint {
  readonly id: string;
  readonly train: string;
  readonly says: string;
  readonly seen: readonly {
    readonly test: string;
    readonly range: string;
    readonly gear: string;
    readonly outcome: string;
    readonly value?: number;
    readonly load?: string;
  }[];
  readonly forbiddenNext: readonly { readonly test: string; readonly at: string }[];
}

const MOST = 4;

describe('a complaint that is followed to its end', () => {
  it.each(cases.map((its) => [its.id, its] as const))('%s', (_, its) => {
    const train = readTrain(JSON.stringify(trains[its.train])).train as Train;
    const inquiry = inquire(train, practice);
    const road = readSeen(driven(its).join('\n'), inquiry);
    expect(road.problems).toEqual([]);
    const said = complaintSeen(its.says, inquiry).observations;
    expect(said.length).toBeGreaterThan(0);
    const observations: Observation[] = [...said, ...road.observations];
    for (let step = 0; step < MOST; step++) {
      const { advice } = diagnose(inquiry, observations);
      const made = new Set(observations.map(({ test }) => testText(test)));
      for (const { test } of [...(advice.best ? [advice.best] : []), ...advice.others]) {
        const text = testText(test);
        const forbidden = its.forbiddenNext.filter((one) => forbids(one, test));
        expect(forbidden, `step ${step}: ${text}`).toEqual([]);
        expect(made.has(text) && test.test !== 'selector', `step ${step}: ${text}`).toBe(false);
      }
      const [expected] = advice.best?.parts ?? [];
      if (!advice.best || !expected) break;
      const sight = sightOf(expected.outcome);
      observations.push({ test: advice.best.test, sight, sure: 'sure' });
    }
  });
});

// What was driven; pressure, fluid and hands are found on the way.
function driven({ seen }: Complaint): string[] {
  return seen.flatMap(({ test, range, gear, outcome, value, load }) => {
    const name = range === gear ? range : `${range} ${gear}`;
    const under = load ? ` ${load}` : '';
    if (test === 'road test') return [`- ${name}${under}: ${value ?? outcome}`];
    return test === 'engine-braking check' ? [`- ${name} coast: ${value ?? outcome}`] : [];
  });
}

// "Tighter, by feel", "stop at the first fault" and "replace" are no tests; they are never said.
function forbids({ test, at }: { test: string; at: string }, its: Test): boolean {
  switch (test) {
    case 'stall test':
      return its.test === 'stall';
    case 'road test':
      return its.test === 'under power' || its.test === 'shift' || its.test === 'manual shift';
    case 'engine-braking check':
      return its.test === 'coast' && its.gear.startsWith(at.charAt(0));
    case 'band adjustment':
      return its.test === 'band check' && !at.includes('by feel');
    case 'teardown':
      return its.test === 'inspection' && !at.includes('first fault');
    case 'air test':
      return its.test === 'air check';
    case 'replace':
      return false;
    default:
      throw new Error(`no such test: ${test}`);
  }
}
