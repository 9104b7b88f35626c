import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Practice, readPractice } from '../practice/index.ts';
import type { Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import type { Problem } from '../yaml/index.ts';
import { inquire } from '../cause/index.ts';
import { readSeen } from './seenfile.ts';

// Every file of faulty/ has its problems drawn under the offending text in a file beside it.
// UPDATE=1 accepts what is drawn now: read the difference before it is committed.
const FOLDER = new URL('faulty/', import.meta.url);
const files = readdirSync(FOLDER).filter((name) => name.endsWith('.seen.yaml'));
const ours = (file: string) => readFileSync(new URL(`../../../${file}`, import.meta.url), 'utf8');
const inquiry = inquire(
  readTrain(ours('trains/kestrel-three-speed.train.yaml')).train as Train,
  readPractice(ours('experience.yaml')).practice as Practice,
);

describe('a faulty file of what was seen', () => {
  it.each(files)('%s', (name) => {
    const text = readFileSync(new URL(name, FOLDER), 'utf8');
    const drawn = draw(text, readSeen(text, inquiry).problems);
    const beside = new URL(name.replace('.seen.yaml', '.expected'), FOLDER);
    if (process.env['UPDATE'] === '1') writeFileSync(beside, drawn);
    expect(drawn).toBe(existsSync(beside) ? readFileSync(beside, 'utf8') : 'what is expected');
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
