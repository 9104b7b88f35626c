import path from 'node:path';
import { type Reading, readTrain } from '../../engine/trainfile/index.ts';
import { nearest, type Problem } from '../../engine/yaml/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { problemText } from '../../telling/narrative/index.ts';
import { MOST_BYTES } from './disk.ts';
import { Refusal } from './refusal.ts';
import type { Session } from './session.ts';
import { reasonOf } from './watched.ts';
import type { World } from './world.ts';

/** Reads a train file, which may be full of mistakes; refuses what cannot be read at all. */
export function readFile(file: string, { world }: Session): Reading {
  return readTrain(textOf(file, world));
}

/** The train of a file; refuses with its first error where there is none. */
export function trainOf(file: string, session: Session): Train {
  const { train, problems } = readFile(file, session);
  const errors = problems.filter(({ severity }) => severity === 'error');
  const [first] = errors;
  if (!first && train) {
    tellRenamed(file, problems, session);
    return train;
  }
  throw new Refusal('bad.train', {
    file,
    place: first ? placeOf(file, first) : file,
    problem: first ? problemText(first, session.language) : '',
    more: errors.length - 1,
  });
}

/** Refuses a file beside the train's with its first problem. */
export function refuseFile(file: string, problems: readonly Problem[], session: Session): never {
  const [first] = problems as [Problem];
  const problem = problemText(first, session.language);
  const place = placeOf(file, first);
  throw new Refusal('bad.file', { place, problem, more: problems.length - 1 });
}

/** Tells, on standard error, which words of a file have another name now. */
export function tellRenamed(
  file: string,
  problems: readonly Problem[],
  { world, language }: Session,
): void {
  for (const problem of problems) {
    if (problem.problem !== 'renamed') continue;
    world.err(`holdturn: ${placeOf(file, problem)}: ${problemText(problem, language)}\n`);
  }
}

// "file:line:column", which editors and terminals turn into a link.
function placeOf(file: string, { place }: Problem): string {
  return `${file}:${place.line}:${place.column}`;
}

/** The start of a hash of a file's text, by which two copies are told apart. */
export function hashOf(file: string, world: World): string {
  const { createHash } = process.getBuiltinModule('node:crypto');
  return createHash('sha256').update(textOf(file, world)).digest('hex').slice(0, 12);
}

/** A file's text; refuses what cannot be read. */
export function textOf(file: string, world: World): string {
  try {
    return world.read(file);
  } catch (error) {
    const reason = reasonOf(error);
    if (reason === 'EFBIG') throw new Refusal('bad.too big', { file, most: MOST_BYTES / 2 ** 20 });
    if (reason === 'ETIMEDOUT') throw new Refusal('bad.silent', { file });
    if (file === '-') throw new Refusal('bad.stdin', { reason });
    if (reason === 'EISDIR') throw new Refusal('bad.directory', { file });
    if (reason !== 'ENOENT' && reason !== 'ENOTDIR')
      throw new Refusal('bad.unreadable', { file, reason });
    const target = world.target(file);
    if (target !== undefined) throw new Refusal('bad.link', { file, target });
    const near = nearest(path.basename(file), world.list(path.dirname(file)));
    const meant = near === undefined ? '' : path.join(path.dirname(file), near);
    throw new Refusal('no.file', { file, has: near === undefined ? 'no' : 'yes', near: meant });
  }
}
