import type { Inquiry, Observation } from '../../engine/suspects/index.ts';
import { readSeen } from '../../engine/suspects/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/trainfile/index.ts';
import { type PlaysReading, readPlays } from '../endplay/index.ts';
import type { Length } from '../length/index.ts';
import { type PackReadings, readReadings, type ReadingsReading } from '../packs/index.ts';
import { type FoldedEntry, type FoldedJob, standing } from './fold.ts';
import { quoted } from './line.ts';

/** The readings of packs that stand: of each pack, the latest by each way. Places are entries' lines. */
export function packReadingsIn(job: FoldedJob, train: Train): ReadingsReading {
  const byDevice = new Map<string, PackReadings>();
  const problems: Problem[] = [];
  for (const entry of standing(job, 'reading')) {
    if (entry.told.from !== 'pack') continue;
    const read = readReadings(textOf(entry.told), train);
    problems.push(...at(entry, read.problems));
    for (const its of read.readings) {
      byDevice.set(its.device, { ...byDevice.get(its.device), ...its });
    }
  }
  return { readings: [...byDevice.values()], problems };
}

/** The readings of end plays that stand: of each shaft, the latest. */
export function playsIn(job: FoldedJob, train: Train): PlaysReading {
  const plays = new Map<string, readonly Length[]>();
  const problems: Problem[] = [];
  for (const entry of standing(job, 'reading')) {
    if (entry.told.from !== 'shaft') continue;
    const read = readPlays(textOf(entry.told), train);
    problems.push(...at(entry, read.problems));
    for (const [shaft, lengths] of read.plays) plays.set(shaft, lengths);
  }
  return { plays, problems };
}

/** What was seen and stands: all of it, for a test may be made twice. */
export function seenIn(
  job: FoldedJob,
  inquiry: Inquiry,
): { readonly observations: readonly Observation[]; readonly problems: readonly Problem[] } {
  const all = standing(job, 'seen').map((entry) => {
    const { observations, problems } = readSeen(textOf(entry.told), inquiry);
    // A job is never edited, so that nobody is told what a word of it is called now.
    const errors = problems.filter(({ severity }) => severity === 'error');
    return { observations, problems: at(entry, errors) };
  });
  return {
    observations: all.flatMap(({ observations }) => observations),
    problems: all.flatMap(({ problems }) => problems),
  };
}

function textOf({ of, text }: { readonly of: string; readonly text: string }): string {
  return `${quoted(of)}: ${text}`;
}

function at({ line }: FoldedEntry, problems: readonly Problem[]): Problem[] {
  return problems.map((problem) => ({ ...problem, place: { line, column: 1, length: 1 } }));
}
