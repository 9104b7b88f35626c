import { type Mention } from '../form/index.ts';
import { withRanges } from '../controls/index.ts';
import { SECTIONS, trainOf } from '../sections/index.ts';
import { partsOf, type Train } from '../train/index.ts';
import {
  find,
  Findings,
  Lines,
  type Node,
  parseTree,
  type Place,
  type Problem,
} from '../yaml/index.ts';
import { checkNames, lookAtNames } from './names.ts';
import { type Outline, outlineOf } from './outline.ts';

/** The most that is read of one train. */
const MOST_MEMBERS = 120;
const MOST_DEVICES = 64;

/** What a train file says: a train if it has no error, and whatever is to be told. */
export interface Reading {
  readonly train: Train | undefined;
  /**
   * What could be read, for whoever helps to write the rest: an entry with a mistake in it is
   * left out, a text that is missing is empty, and names may mean nothing. Undefined where the
   * text is no YAML.
   */
  readonly soFar: Train | undefined;
  /** Errors and warnings in the order of the file. */
  readonly problems: readonly Problem[];
  /**
   * Where something stands, for whoever has more to say about it: `place('sets', 'front')`,
   * `place('devices', 'low sprag', 'lets')`, `place('ranges', 'D', '1')`, and in a list by the
   * item's text or index: `place('joined', 'sun shell', 'rear.sun')`. Leads as far down the
   * path as the file goes; to its start where it does not go at all.
   */
  place(...path: readonly string[]): Place;
}

/** Reads a train file. Never throws: every mistake is a problem with its place. */
export function readTrain(text: string): Reading {
  const { train, soFar, findings, root, lines } = readFile(text);
  return {
    train,
    soFar,
    problems: findings.list(),
    place: (...path) => lines.place(root ? find(root, path) : { from: 0, to: 0 }),
  };
}

/** A reading with what an edit needs besides. */
export interface FileReading {
  readonly train: Train | undefined;
  readonly soFar: Train | undefined;
  readonly findings: Findings;
  readonly root: Node | undefined;
  readonly mentions: readonly Mention[];
  readonly lines: Lines;
}

export function readFile(text: string): FileReading {
  const lines = new Lines(text);
  const findings = new Findings(lines);
  const root = parseTree(text, findings);
  // Where the YAML is broken, what it seems to say would only add noise.
  const outline = root && outlineOf(root, text, findings);
  const soFar = root && outline && checkedTrain(root, outline, findings);
  return {
    train: findings.errorCount === 0 && soFar ? withRanges(soFar) : undefined,
    soFar,
    findings,
    root,
    mentions: outline?.mentions ?? [],
    lines,
  };
}

function checkedTrain(root: Node, { entries, mentions }: Outline, findings: Findings): Train {
  const train = trainOf(entries);
  const at = (...path: string[]) => find(root, path);
  const members = memberCount(train, mentions);
  const devices = mentions.filter(({ role }) => role.names === 'device' && role.own).length;
  const most = [
    ['sets', 'members', members, MOST_MEMBERS],
    ['devices', 'devices', devices, MOST_DEVICES],
  ] as const;
  const tooMany = most.filter(([, , count, limit]) => count > limit);
  for (const [key, what, count, limit] of tooMany) {
    findings.error(at(key), { problem: 'too many', what, count, most: limit });
  }
  if (tooMany.length > 0) return train;
  checkNames(train, mentions, findings);
  for (const section of SECTIONS) section.check?.(train, at, findings);
  lookAtNames(train, mentions, findings);
  if (findings.errorCount === 0) {
    for (const section of SECTIONS) section.checkSound?.(train, at, findings);
  }
  if (findings.errorCount === 0) {
    for (const section of SECTIONS) section.lookAgain?.(train, at, findings);
  }
  return train;
}

function memberCount(train: Train, mentions: readonly Mention[]): number {
  const names = new Set(
    train.sets.flatMap((set) => partsOf(set).map((part) => `${set.name}.${part}`)),
  );
  for (const { role, name } of mentions) if (role.names === 'member') names.add(name);
  return names.size;
}
