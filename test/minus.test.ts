import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { voiceOf } from '../src/telling/narrative/index.ts';
import { flowsOf } from '../src/asking/gears/index.ts';
import { chart } from '../src/engine/chart/index.ts';
import { chartCsv, chartJson } from '../src/telling/data/index.ts';
import { ROOT } from './sources.ts';
import { ours } from './trains.ts';

// A hyphen that stands for a minus before a figure: not a range, a name or an option.
const HYPHEN = /(?:^|[\s(=×>,])-\s?\d/u;
const MINUS = '\u2212';

const read = (folder: string, ends: string) =>
  readdirSync(path.join(ROOT, folder))
    .filter((file) => file.endsWith(ends))
    .map((file) => readFileSync(path.join(ROOT, folder, file), 'utf8'));

describe('a minus', () => {
  it('is one in every answer that is kept; a line that is typed has its hyphen', () => {
    const lines = read('src/doors/cli/golden', '.txt').flatMap((text) => text.split('\n'));
    const said = lines.filter((line) => !line.startsWith('$ '));
    expect(said.filter((line) => HYPHEN.test(line))).toEqual([]);
    expect(said.filter((line) => line.includes(MINUS)).length).toBeGreaterThan(20);
  });

  it('is one in every drawing that is kept', () => {
    const drawn = [...read('docs/gallery', '.svg'), ...read('trains', '.svg')].flatMap((text) => [
      ...text.matchAll(/<text[^>]*>([^<]*)</gu),
    ]);
    const words = drawn.map(([, text = '']) => text);
    expect(words.filter((text) => HYPHEN.test(` ${text}`))).toEqual([]);
    expect(words.filter((text) => text.includes(MINUS)).length).toBeGreaterThan(3);
  });

  it('is a plain hyphen for other programs', () => {
    const train = ours('kestrel-three-speed');
    const flows = flowsOf(train);
    const texts = [
      chartCsv(train, flows, { voice: voiceOf('en') }),
      JSON.stringify(chartJson(chart(train))),
    ];
    for (const text of texts) {
      expect(text).toMatch(/-\d/u);
      expect(text).not.toContain(MINUS);
    }
  });
});
