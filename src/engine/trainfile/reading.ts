import type { Train } from '../train/index.ts';
import { buildTrain } from './build.ts';
import { checkCapacities } from './capacities.ts';
import { find } from './find.ts';
import { Findings } from './findings.ts';
import type { Mention } from './mention.ts';
import { checkNames, doubtNames } from './names.ts';
import { type Outline, outlineOf } from './outline.ts';
import { partsOf } from './parts.ts';
import { Lines, type Place } from './place.ts';
import type { Problem } from './problem.ts';
import { checkSense, doubtDevices, MOST_DEVICES, MOST_MEMBERS } from './sense.ts';
import { checkTeardown, doubtTeardown } from './teardown.ts';
import type { Node } from './node.ts';
import { parseTree } from './tree.ts';

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
  const soFar = root && outline && trainOf(root, outline, findings);
  return {
    train: findings.errorCount === 0 ? soFar : undefined,
    soFar,
    findings,
    root,
    mentions: outline?.mentions ?? [],
    lines,
  };
}

function trainOf(root: Node, { file, mentions }: Outline, findings: Findings): Train {
  const train = buildTrain(file);
  const at = (...path: string[]) => find(root, path);
  const members = memberCount(train, mentions);
  const devices = mentions.filter(({ as }) => as === 'device').length;
  if (members > MOST_MEMBERS) {
    findings.error(at('sets'), {
      problem: 'too many',
      what: 'members',
      count: members,
      most: MOST_MEMBERS,
    });
  }
  if (devices > MOST_DEVICES) {
    findings.error(at('devices'), {
      problem: 'too many',
      what: 'devices',
      count: devices,
      most: MOST_DEVICES,
    });
  }
  if (members > MOST_MEMBERS || devices > MOST_DEVICES) return train;
  checkNames(train, mentions, findings);
  checkSense(train, at, findings);
  doubtNames(train, mentions, findings);
  // Parts carry what is known to be there.
  if (findings.errorCount === 0) {
    checkTeardown(train, at, findings);
    checkCapacities(train, at, findings);
  }
  if (findings.errorCount === 0) {
    doubtDevices(train, at, findings);
    doubtTeardown(train, at, findings);
  }
  return train;
}

function memberCount(train: Train, mentions: readonly Mention[]): number {
  const names = new Set(
    train.sets.flatMap((set) => partsOf(set).map((part) => `${set.name}.${part}`)),
  );
  for (const { as, name } of mentions) if (as === 'member' || as === 'join') names.add(name);
  return names.size;
}
