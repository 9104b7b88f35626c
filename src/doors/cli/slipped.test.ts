import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { ask } from './asked.ts';

const K = path.resolve('trains/kestrel-three-speed.train.yaml');
const D = path.resolve('trains/dunlin-final-drive.train.yaml');
const folder = fs.mkdtempSync(path.join(fs.realpathSync(os.tmpdir()), 'holdturn-cli-slipped-'));
const file = path.join(folder, 'read.yaml');
afterAll(() => fs.rmSync(folder, { recursive: true }));

describe('digits that cannot be meant are asked about, and nothing is chosen', () => {
  it.each([
    ['endplay', K, 'turbine shaft: [4.4 mm]', 'point slipped'],
    [
      'endplay',
      K,
      'turbine shaft: { play: [0.82 mm], again: { fitted: 2.00 mm, read: [0.44 in] } }',
      'other unit',
    ],
    ['pack', K, 'forward clutch: { feeler: [1.02 mm, 102 mm, 1.03 mm] }', 'point slipped'],
    ['pack', K, 'forward clutch: { feeler: [1.01 mm, 1.02 mm, 1.20 mm] }', 'digits swapped'],
    ['endplay', K, 'main shaft: [0.014 in, 0.013 in, 0.041 in]', 'digits swapped'],
    ['endplay', K, 'turbine shaft: [0.40 mm, 999 mm]', 'not possible'],
    ['endplay', K, 'turbine shaft: [0.01 mm]', 'not possible'],
    ['band', K, 'intermediate band: { travel: [22.0 mm] }', 'point slipped'],
    ['wear', K, 'stator bushing: { bore: [38.10 mm], shaft: [3.803 mm] }', 'sizes apart'],
    ['wear', K, 'front planets: { read: [5.0 mm] }', 'point slipped'],
    ['preload', D, 'differential bearings: { turning: [1200 Nm] }', 'torque slipped'],
  ] as const)('%s: %3$s', async (verb, train, text, remark) => {
    fs.writeFileSync(file, text);
    const { out, exit } = await ask(`${verb} ${train} ${file}`);
    const [its] = JSON.parse((await ask(`${verb} ${train} ${file} --json`)).out);
    const remarks = its.remarks.map((one: { remark: string }) => one.remark);
    expect([exit, its.selection ?? null]).toEqual([1, null]);
    expect(remarks).toContain(remark);
    // Of what was not meant no verdict is told.
    expect(its.verdict ?? null).toBeNull();
    expect(out).not.toMatch(/Fit the|Drive in|Squeeze them|That closes|Replace the/u);
  });

  it('but not where a second reading stands by it', async () => {
    fs.writeFileSync(file, 'front planets: { read: [5.0 mm, 5.1 mm] }');
    const [its] = JSON.parse((await ask(`wear ${K} ${file} --json`)).out);
    expect([its.verdict, its.remarks]).toEqual(['too big', []]);
  });
});

it('what the sizes of the file leave is told no coarser for a coarse reading', async () => {
  fs.writeFileSync(file, 'turbine shaft: [18 mm]');
  const { out } = await ask(`endplay ${K} ${file}`);
  expect(out.replaceAll(/\s+/gu, ' ')).toContain('0.50 mm (0.0197 in), ± 0.27 mm');
});

describe('read again, where the first readings were uneven', () => {
  const again = async (read: string) => {
    const first = 'play: [0.67 mm, 0.82 mm, 0.97 mm]';
    const its = `{ ${first}, again: { fitted: 2.00 mm, read: [${read}] } }`;
    fs.writeFileSync(file, `turbine shaft: ${its}`);
    const { out } = await ask(`endplay ${K} ${file}`);
    return out.replaceAll(/\s+/gu, ' ');
  };

  // With 1.60 mm in it is 0.82 mm: 2.00 mm would leave 0.42 mm, and 1.80 mm 0.62 mm.
  it('what another part of the shelf would leave closes nothing, and that part is asked after', async () => {
    const out = await again('0.61 mm');
    expect(out).toMatch(/it reads as with 1\.80 mm .*in: is that the one that is in\?/u);
    expect(out).not.toContain('That closes it');
  });

  it('what the part that is in leaves closes it', async () => {
    expect(await again('0.45 mm')).toContain('That closes it');
  });
});
