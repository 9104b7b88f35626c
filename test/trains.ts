import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { ROOT } from './sources.ts';

const FOLDER = path.join(ROOT, 'trains');

/** The trains of ours, by the names of their files: `kestrel-three-speed`. */
export const OURS: readonly string[] = readdirSync(FOLDER).flatMap((file) => {
  return /^(.*)\.train\.yaml$/u.exec(file)?.[1] ?? [];
});

/** A train of ours, by the name of its file. */
export function ours(name: string): Train {
  const { train } = readTrain(textOf(name));
  if (!train) throw new Error(`${name} does not read`);
  return train;
}

/** Its file. */
export function textOf(name: string): string {
  return readFileSync(path.join(FOLDER, `${name}.train.yaml`), 'utf8');
}
