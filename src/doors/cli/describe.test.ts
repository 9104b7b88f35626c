import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, it } from 'vitest';
import { readTrain } from '../../engine/trainfile/index.ts';
import { ask } from './asked.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'holdturn-describe-'));

it('makes a train file by questions, with wrong answers told where they are given', async () => {
  const file = path.join(folder, 'wren.train.yaml');
  const answers = [
    ['Wren', 'input shaft', 'input shaft', 'drum gear'],
    // A set; its sun was counted wrong, and is taken back.
    ['main', '1', '31', 'back', '30', '66', '3', '', 'no, that is all'],
    // Splines: the shaft to the sun, the drum to the carrier, the ring to nothing.
    ['main sun', 'main carrier', ''],
    ['2', 'low brake', 'case', 'main ring', '2'],
    ['D', '1', 'low brake', '2'],
    // The plates of its pack: forty are asked about, and seven steels cannot lie in turn.
    ['A pack of plates', 'low brake', 'A steel', '40', '4', '7', '5', '2.00 mm', '1.80', '1.80 mm'],
    ['', '', ''],
  ].flat();
  const { out, exit } = await ask(`describe ${file}`, { stdin: answers.join('\n') });
  expect(exit).toBe(0);
  const text = readFileSync(file, 'utf8');
  expect(text.slice(0, text.indexOf('\npacks:'))).toBe(`holdturn: 1
name: Wren
input: input shaft
output: drum gear

sets:
  main: { sun: 30, ring: 66, planets: 3 }

joined:
  input shaft: [main.sun]
  drum gear: [main.carrier]

devices:
  low brake: { brake: main.ring }

ranges:
  D: { "1": [low brake] }
`);
  const { train } = readTrain(text);
  const plates = train?.packs?.[0]?.plates.map(({ kind, thickness }) => `${kind} ${thickness}`);
  const [steel, friction] = ['steel 1.80 mm', 'friction 2.00 mm'];
  const turns = Array.from({ length: 4 }, () => [steel, friction]).flat();
  expect(plates).toEqual([...turns, steel]);
  const told = out.replace(/\s+/gu, ' ');
  expect(told).toContain('It cannot be input shaft here');
  expect(told).toContain('It cannot be case here');
  expect(told).toContain('hardly ever over 16');
  expect(told).toContain('So many do not lie in turn');
  expect(told).toContain('expected a length');
});

it('goes on with a file that is there, in Spanish, and takes nothing but a file', async () => {
  const file = path.join(folder, 'wren.train.yaml');
  const { out } = await ask(`describe ${file} --lang es`, { stdin: 'q' });
  expect(out).toContain('¿Hay otra marcha?');
  expect((await ask('describe -')).exit).toBe(2);
});
