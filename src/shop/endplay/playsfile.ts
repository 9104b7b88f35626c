import * as v from 'valibot';
import type { Train } from '../../engine/train/index.ts';
import {
  type Expected,
  find,
  Findings,
  length,
  Lines,
  nearest,
  parseTree,
  type Problem,
  Walker,
} from '../../engine/trainfile/index.ts';
import { type Length, lengthFrom } from '../length/index.ts';

/** What a file of end plays says, by shaft; none of it where it has a mistake. */
export interface PlaysReading {
  readonly plays: ReadonlyMap<string, readonly Length[]>;
  readonly problems: readonly Problem[];
}

/** Reads end plays: a shaft and its readings each. Never throws. */
export function readPlays(text: string, train: Train): PlaysReading {
  const findings = new Findings(new Lines(text));
  const root = parseTree(text, findings);
  if (!root) return { plays: new Map(), problems: findings.list() };
  const walker = new Walker(text, findings, (name) => name);
  const start = { from: root.at.from, to: root.at.from };
  const read = walker.value(root, PLAYS as never, [], start) as ReadonlyMap<string, string[]>;
  if (findings.errorCount === 0) {
    const shafts = (train.endPlays ?? []).map(({ shaft }) => shaft);
    for (const shaft of read.keys()) {
      if (shafts.includes(shaft)) continue;
      findings.error(find(root, [shaft]), () => {
        const near = nearest(shaft, shafts);
        return { problem: 'no end play', shaft, ...(near !== undefined && { near }) };
      });
    }
  }
  const problems = findings.list();
  const plays = problems.length > 0 ? [] : [...read];
  return {
    plays: new Map(
      plays.map(([shaft, texts]) => [shaft, texts.map((its) => lengthFrom(its) as Length)]),
    ),
    problems,
  };
}

const or = (what: Expected) => what;
const PLAYS = v.nullish(
  v.record(
    v.string(or('name')),
    v.pipe(v.array(length('A reading.'), or('lengths')), v.minLength(1, or('lengths'))),
    or('section'),
  ),
);
