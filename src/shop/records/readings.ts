import {
  MEASURED,
  MEASURED_KINDS,
  type MeasuredKind,
  type Train,
} from '../../engine/train/index.ts';
import { type FileMistake, nearest, type Node, type Problem } from '../../engine/yaml/index.ts';
import { type BandReadings, readBands } from '../bands/index.ts';
import { type PlayReadings, readPlays } from '../endplay/index.ts';
import { type PackReadings, readReadings } from '../packs/index.ts';
import { type PreloadReadings, readPreloads } from '../preload/index.ts';
import { readWear, type WearReadings } from '../wear/index.ts';
import { type FoldedEntry, type FoldedJob, standing } from './fold.ts';
import { atEntry, fileText } from './line.ts';
import { newPlatesIn } from './newplates.ts';

/**
 * The readings of a job that stand: of each thing, the latest by each way; of a pack that has new
 * plates only what was read of these, where anything was.
 */
export interface JobReadings {
  readonly packs: readonly PackReadings[];
  readonly plays: readonly PlayReadings[];
  readonly bands: readonly BandReadings[];
  readonly wear: readonly WearReadings[];
  readonly preloads: readonly PreloadReadings[];
  /** Of what could not be used; places are entries' lines. */
  readonly problems: readonly Problem[];
}

type Section = Exclude<keyof JobReadings, 'problems'>;

interface Kind {
  readonly section: Section;
  readonly read: (
    text: string,
    train?: Train,
  ) => { readonly readings: readonly object[]; readonly problems: readonly Problem[] };
  /** The words by which its form is known where no train is. */
  readonly keys: readonly string[];
}

const KINDS: Readonly<Record<MeasuredKind, Kind>> = {
  pack: { section: 'packs', read: readReadings, keys: [] },
  endplay: { section: 'plays', read: readPlays, keys: ['play'] },
  band: { section: 'bands', read: readBands, keys: ['turns', 'travel'] },
  wear: { section: 'wear', read: readWear, keys: ['read', 'bore', 'shaft'] },
  preload: {
    section: 'preloads',
    read: readPreloads,
    keys: ['turning', 'pull', 'gap', 'bearings'],
  },
};

export function readingsIn(job: FoldedJob, train: Train): JobReadings {
  const found = new Map<Section, Map<string, object>>();
  const problems: Problem[] = [];
  const fresh = newPlatesIn(job, train);
  const isFresh = (entry: FoldedEntry, of: string) => {
    const place = fresh.get(of);
    return place === undefined || job.entries.indexOf(entry) > place;
  };
  const known = new Map<string, boolean>();
  for (const entry of standing(job, 'reading')) {
    const { of } = entry.told;
    const read = readAs(kindsOf(of, train), fileText(entry.told), train);
    problems.push(...atEntry(entry, read?.problems ?? [unmeasured(of, train)]));
    if (!read?.section || read.problems.length > 0) continue;
    const section = found.get(read.section) ?? new Map<string, object>();
    found.set(read.section, section);
    const its = isFresh(entry, of);
    const before = known.get(of) === its ? section.get(of) : undefined;
    known.set(of, its);
    for (const one of read.readings) section.set(of, { ...before, ...one });
  }
  const all = (section: Section) => [...(found.get(section)?.values() ?? [])] as never;
  return {
    packs: all('packs'),
    plays: all('plays'),
    bands: all('bands'),
    wear: all('wear'),
    preloads: all('preloads'),
    problems,
  };
}

/** What is wrong with a reading of a train's. */
export function readingProblems(text: string, of: string, train: Train): readonly Problem[] {
  return readAs(kindsOf(of, train), text, train)?.problems ?? [unmeasured(of, train)];
}

/** What is wrong with a reading's form, where no train is known. */
export function formProblems(text: string, node: Node): readonly Problem[] {
  return readAs(formsOf(node), text, undefined)?.problems ?? [];
}

/** All that a train measures, by name. */
export function measuredNames(train: Train): string[] {
  return [...new Set(MEASURED_KINDS.flatMap((kind) => MEASURED[kind](train)))];
}

function kindsOf(of: string, train: Train): readonly Kind[] {
  const kinds = MEASURED_KINDS.filter((kind) => MEASURED[kind](train).includes(of));
  return kinds.map((kind) => KINDS[kind]);
}

// A list is of a play; entries are those of the kind whose words they are, or of a pack.
function formsOf(node: Node): readonly Kind[] {
  const keys = node.kind === 'section' ? node.entries.map(({ key }) => key) : ['play'];
  const known = Object.values(KINDS).filter((kind) => keys.some((key) => kind.keys.includes(key)));
  return known.length > 0 ? known : [KINDS.pack];
}

// By the first kind that can read it; by the first of all, with its problems, where none can.
function readAs(kinds: readonly Kind[], text: string, train: Train | undefined) {
  const all = kinds.map(({ section, read }) => ({ section, ...read(text, train) }));
  return all.find(({ problems }) => problems.length === 0) ?? all[0];
}

function unmeasured(name: string, train: Train): Problem {
  return { ...notMeasured(name, measuredNames(train)), severity: 'error', place: NOWHERE };
}

const NOWHERE = { line: 1, column: 1, length: 1 };

/** That nothing of a name is measured, and which of the known was meant. */
export function notMeasured(name: string, known: readonly string[]): FileMistake {
  const near = nearest(name, known);
  return { problem: 'nothing measured', name, ...(near !== undefined && { near }) };
}
