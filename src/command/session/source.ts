import path from 'node:path';
import { type Given, type Renamed, trainIn } from '../../asking/request/index.ts';
import { nearest } from '../../engine/yaml/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { hashOf as hashOfText } from '../../shop/records/index.ts';
import { problemText } from '../../telling/narrative/index.ts';
import { MOST_BYTES, Misuse, reasonOf, type World } from '../machine/index.ts';
import type { Session } from './session.ts';

/** The train of a file; refuses with its first error where there is none. */
export function trainOf(file: string, session: Session): Train {
  const { train, renamed } = trainIn(givenIn(file, session.world));
  tellRenamed(renamed, session);
  return train;
}

/** Tells, on standard error, which words of files have another name now. */
export function tellRenamed(renamed: readonly Renamed[], { world, page }: Session): void {
  for (const { called, problem } of renamed) {
    const { line, column } = problem.place;
    world.err(`holdturn: ${called}:${line}:${column}: ${problemText(problem, page.voice)}\n`);
  }
}

/** The start of a hash of a file's text, by which two copies are told apart. */
export function hashOf(file: string, world: World): string {
  return hashOfText(textOf(file, world));
}

/** A file's text by the name of the file; refuses what cannot be read. */
export function givenIn(file: string, world: World): Given {
  return { called: file, text: textOf(file, world) };
}

/** A file's text; refuses what cannot be read. */
export function textOf(file: string, world: World): string {
  try {
    return world.read(file);
  } catch (error) {
    const reason = reasonOf(error);
    if (reason === 'EFBIG') throw new Misuse('bad.too big', { file, most: MOST_BYTES / 2 ** 20 });
    if (reason === 'ETIMEDOUT') throw new Misuse('bad.silent', { file });
    if (file === '-') throw new Misuse('bad.stdin', { reason });
    if (reason === 'EISDIR') throw new Misuse('bad.directory', { file });
    if (reason !== 'ENOENT' && reason !== 'ENOTDIR')
      throw new Misuse('bad.unreadable', { file, reason });
    const target = world.target(file);
    if (target !== undefined) throw new Misuse('bad.link', { file, target });
    const near = nearest(path.basename(file), world.list(path.dirname(file)));
    const meant = near === undefined ? '' : path.join(path.dirname(file), near);
    throw new Misuse('no.file', { file, has: near === undefined ? 'no' : 'yes', near: meant });
  }
}
