import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { ask } from './asked.ts';

const K = path.resolve('trains/kestrel-three-speed.train.yaml');
const D = path.resolve('trains/dunlin-final-drive.train.yaml');
const folder = fs.mkdtempSync(path.join(fs.realpathSync(os.tmpdir()), 'holdturn-cli-again-'));
const file = path.join(folder, 'read.yaml');
afterAll(() => fs.rmSync(folder, { recursive: true }));
const judged = async (verb: string, train: string, text: string) => {
  fs.writeFileSync(file, text);
  const { out, exit } = await ask(`${verb} ${train} ${file}`);
  const data = JSON.parse((await ask(`${verb} ${train} ${file} --json`)).out);
  return { said: out.replaceAll(/\s+/gu, ' '), exit, its: data[0] };
};

describe('what is read again is the last word', () => {
  it.each([
    // Inside and as predicted, first too big; too small, and not as predicted; too big still.
    [
      'endplay',
      'turbine shaft: { play: [0.82 mm], again: { fitted: 2.00 mm, read: [0.43 mm] } }',
      'inside',
      0,
      null,
    ],
    [
      'endplay',
      'turbine shaft: { play: [0.82 mm], again: { fitted: 2.00 mm, read: [0.10 mm] } }',
      'too small',
      1,
      null,
    ],
    [
      'endplay',
      'turbine shaft: { play: [1.10 mm], again: { fitted: 1.80 mm, read: [0.90 mm] } }',
      'too big',
      1,
      '2.20',
    ],
    [
      'endplay',
      'turbine shaft: { play: [0.44 mm], again: { fitted: 1.40 mm, read: [0.10 mm] } }',
      'too small',
      1,
      null,
    ],
    [
      'pack',
      'forward clutch: { feeler: [1.42 mm, 1.42 mm, 1.42 mm], again: { fitted: 5.40 mm, read: [1.02 mm] } }',
      'inside',
      0,
      null,
    ],
    [
      'pack',
      'forward clutch: { feeler: [1.82 mm, 1.82 mm, 1.82 mm], again: { fitted: 5.20 mm, read: [1.62 mm] } }',
      'too big',
      1,
      null,
    ],
  ] as const)('%s, %s: %s', async (verb, text, verdict, exit, part) => {
    const { said, its, exit: given } = await judged(verb, K, text);
    expect([its.verdict, given]).toEqual([verdict, exit]);
    const best = its.selection?.best;
    if (part) expect(best.size.mm).toBe(part);
    // Nothing to fit where it is closed, and never what was just tried.
    if (exit === 0) expect(said).not.toMatch(/Fit the|leave it in/u);
    expect(best?.stays ?? false).toBe(false);
    expect(said.indexOf('Measured again')).toBeLessThan(said.indexOf('Before that'));
  });
});

describe('a preload', () => {
  it.each([
    ['[0.1 Nm, 2.7 Nm]', null, 1],
    ['[1.4 Nm, 1.4 Nm, 0.2 Nm, 2.6 Nm]', null, 1],
    ['[1.4 Nm, 1.5 Nm]', 'inside', 0],
    ['[2.4 Nm, 2.5 Nm]', 'too big', 1],
  ] as const)('turning %s: %s', async (read, verdict, exit) => {
    const text = `differential bearings: { turning: ${read} }`;
    const { said, its, exit: given } = await judged('preload', D, text);
    expect([its.verdict, given]).toEqual([verdict, exit]);
    expect(said.includes('That proves it')).toBe(verdict === 'inside');
  });

  it('of plays that differ by more than the squeeze may has no shim chosen', async () => {
    const text = 'differential bearings: { gap: [0.02 mm, 0.30 mm] }';
    const { said, its, exit } = await judged('preload', D, text);
    expect([its.selection, exit, said.includes('Fit the')]).toEqual([null, 1, false]);
  });
});

it('a plate below its limit withholds the part: the new set changes the clearance', async () => {
  const text = 'forward clutch: { feeler: [1.42 mm, 1.42 mm, 1.42 mm], steel: [1.60 mm] }';
  const { said, its } = await judged('pack', K, text);
  expect([its.selection, its.thicker, said.includes('Fit the')]).toEqual([null, null, false]);
  expect(said).toContain('until then no part is chosen');
});
