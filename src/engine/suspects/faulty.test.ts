import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { expectKept } from '../../../test/kept.ts';
import { type Experience, readExperience } from '../experience/index.ts';
import type { Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import type { Problem } from '../yaml/index.ts';
import { inquire } from '../cause/index.ts';
import { readSeen } from './seenfile.ts';

// Every file of faulty/ has its problems drawn under the offending text in a file kept beside it.
const FOLDER = new URL('faulty/', import.meta.url);
const files = readdirSync(FOLDER).filter((name) => name.endsWith('.seen.yaml'));
const ours = (file: string) => readFileSync(new URL(`../../../${file}`, import.meta.url), 'utf8');
const inquiry = inquire(
  readTrain(ours('trains/kestrel-three-speed.train.yaml')).train as Train,
  readExperience(ours('experience.yaml')).experience as Experience,
);

describe('a faulty file of what was seen', () => {
  it.each(files)('%s', (name) => {
    const text = readFileSync(new URL(name, FOLDER), 'utf8');
    const drawn = draw(text, readSeen(text, inquiry).problems);
    expectKept(fileURLToPath(new URL(name.replace('.seen.yaml', '.expected'), FOLDER)), drawn);
    expect(drawn).not.toBe('');
  });
});

function draw(text: string, problems: readonly Problem[]): string {
  const lines = text.split('\n');
  return problems
    .map(({ severity, place, problem, ...told }) => {
      const number = `${place.line}`.padStart(3);
      const caret = ' '.repeat(place.column - 1) + '^'.repeat(place.length);
      const said = `${severity}: ${problem} ${JSON.stringify(told)}`;
      return `${number} | ${lines[place.line - 1] ?? ''}\n    | ${caret} ${said}\n`;
    })
    .join('');
}
