import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { expectKept } from '../../../test/kept.ts';
import { type Problem } from '../yaml/index.ts';
import { readTrain } from './index.ts';

// Every file of trains/faulty has its problems drawn under the offending text in a file that is
// kept beside it.
const FOLDER = new URL('../../../trains/faulty/', import.meta.url);
const files = readdirSync(FOLDER).filter((name) => name.endsWith('.train.yaml'));

describe('a faulty file', () => {
  it.each(files)('%s', (name) => {
    const text = readFileSync(new URL(name, FOLDER), 'utf8');
    const drawn = draw(text, readTrain(text).problems);
    expectKept(fileURLToPath(new URL(name.replace('.train.yaml', '.expected'), FOLDER)), drawn);
  });

  it('has no train, unless it is only doubtful', () => {
    for (const name of files) {
      const { train, problems } = readTrain(readFileSync(new URL(name, FOLDER), 'utf8'));
      expect(problems.length, name).toBeGreaterThan(0);
      expect(train === undefined, name).toBe(problems.some(({ severity }) => severity === 'error'));
    }
  });

  it('is expected for every drawing', () => {
    const drawings = readdirSync(FOLDER).filter((name) => name.endsWith('.expected'));
    expect(drawings.map((name) => name.replace('.expected', '.train.yaml'))).toEqual(files);
  });
});

function draw(text: string, problems: readonly Problem[]): string {
  const lines = text.split('\n');
  const drawn: string[] = [];
  let last = 0;
  for (const { severity, place, problem, ...told } of problems) {
    const number = `${place.line}`.padStart(3);
    const line = lines[place.line - 1] ?? '';
    if (place.line !== last) drawn.push(`${number} | ${line}`);
    last = place.line;
    // Tabs stay, so that the carets stand under their text.
    const blank = line.slice(0, place.column - 1).replace(/[^\t]/g, ' ');
    const words = Object.keys(told).length > 0 ? ` ${JSON.stringify(told)}` : '';
    drawn.push(`    | ${blank}${'^'.repeat(place.length)} ${severity}: ${problem}${words}`);
  }
  return `${drawn.join('\n')}\n`;
}
