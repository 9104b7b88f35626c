import fs from 'node:fs';
import { expect, it } from 'vitest';
import { readTrain } from '../../engine/trainfile/index.ts';
import { type Node, Findings, Lines, parseTree } from '../../engine/yaml/index.ts';
import { DISK } from '../../command/machine/disk.ts';
import { run } from './run.ts';

const KESTREL = fs.readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8');
// The same with the keys that its own file leaves out.
const TEXT = KESTREL.replace(
  /^bands:\n[^]*?(?=^\S)/mu,
  `bands:
  intermediate band:
    pitch: 1.50 mm
    lever: 1.5
    limits: { clearance: { least: 1.00 mm, most: 2.00 mm } }
    shelf: { part: apply pin, fitted: 50.0 mm, sizes: [49.0 mm, 50.0 mm, 51.0 mm] }
`,
);
const READINGS: Readonly<Record<string, string>> = {
  turns: 'intermediate band: { turns: 2.5 }\n',
  travel: 'intermediate band: { travel: [3.42 mm] }\n',
  packs:
    'forward clutch: { feeler: [1.42 mm], on air: { pressure: 300 kPa, strokes: [1.5 mm] } }\n',
  plays: 'turbine shaft: [0.42 mm, 0.44 mm]\n',
  worn: 'front planets: { read: [0.42 mm] }\n',
};
const VERBS = [
  'check -',
  'margin -',
  'band - turns',
  'band - travel --json',
  'pack - packs --trials 100',
  'endplay - plays --trials 100',
  'wear - worn',
];

// Too small, too large, and what a float64 writes with an exponent; of lengths what a tool might.
const NUMBERS = ['1e-300', '1e-7', '0.0001', '0.0014', '99999.9', '1e12', '.inf', '-0', '0'];
const LENGTHS = ['0 mm', '0.000001 mm', '1/9999 in', '9999999 mm'];

const findings = new Findings(new Lines(TEXT));
const places = scalars(parseTree(TEXT, findings) as Node, []);
// One place of each key of each section.
const swept = [...new Map(places.toReversed().map((its) => [its.key, its])).values()];

it('every numeric key of a train file is swept', () => {
  expect(readTrain(TEXT).problems).toEqual([]);
  const keys = swept.map(({ key }) => key);
  for (const key of [
    'bands: lever',
    'bands: pitch',
    'capacities: wrap degrees',
    'engine: torque Nm',
    'sets: sun',
  ]) {
    expect(keys).toContain(key);
  }
});

it.each(swept)(
  '$key, as far as it goes, is answered or refused',
  async ({ from, to, isLength }) => {
    for (const value of isLength ? LENGTHS : NUMBERS) {
      const text = TEXT.slice(0, from) + value + TEXT.slice(to);
      for (const verb of readTrain(text).train ? VERBS : VERBS.slice(0, 1)) {
        // oxlint-disable-next-line no-await-in-loop
        expect(await answer(verb, text)).not.toMatch(/NaN|Infinity|undefined/u);
      }
    }
  },
);

// Of files of readings: every number, with its unit as it stands.
it.each(Object.entries(READINGS))('every number of %s too', async (name, readings) => {
  const verb = VERBS.find((its) => its.includes(` ${name}`)) ?? '';
  for (const { 0: number, index } of readings.matchAll(/(?<=[[ ])[0-9.]+(?=[ ,\]}])/gu)) {
    for (const value of ['0', '0.000001', '9999999', '1e-7', '99999']) {
      const text = readings.slice(0, index) + value + readings.slice(index + number.length);
      // oxlint-disable-next-line no-await-in-loop
      expect(await answer(verb, TEXT, { [name]: text })).not.toMatch(/NaN|Infinity|undefined/u);
    }
  }
});

function scalars(
  node: Node,
  path: readonly string[],
): { key: string; from: number; to: number; isLength: boolean }[] {
  if (node.kind === 'list') return node.items.flatMap((item) => scalars(item, path));
  if (node.kind === 'section') {
    return node.entries.flatMap((entry) => scalars(entry.value, [...path, entry.key]));
  }
  const isLength = typeof node.value === 'string' && /^[0-9./]+ (?:mm|in)$/u.test(node.value);
  if (!isLength && typeof node.value !== 'number') return [];
  const key = [path[0], path.at(-1)].join(': ');
  return path[0] === 'holdturn' ? [] : [{ key, ...node.at, isLength }];
}

async function answer(typed: string, text: string, readings = READINGS): Promise<string> {
  let said = '';
  await run({
    args: typed.split(' '),
    env: {},
    terminal: false,
    ...DISK,
    read: (file) => readings[file] ?? text,
    out: (more) => (said += more),
    err: (more) => (said += more),
  });
  return said;
}
