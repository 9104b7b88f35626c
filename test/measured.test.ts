import { readFileSync } from 'node:fs';
import { voiceOf } from '../src/telling/narrative/index.ts';
import { describe, expect, it } from 'vitest';
import { askStanding, askMeasurements } from '../src/asking/build/index.ts';
import {
  MEASURED,
  MEASURED_KINDS,
  type MeasuredKind,
  WEAR_KINDS,
} from '../src/engine/train/index.ts';
import { putLimit, readTrain } from '../src/engine/trainfile/index.ts';
import { lookAtFigures } from '../src/shop/figures/index.ts';
import { limitMisfit } from '../src/shop/records/index.ts';
import { measureSheet } from '../src/telling/sheets/index.ts';
import { keyOf } from '../src/telling/voice/index.ts';
import { en } from '../src/telling/voice/en.ts';
import { es } from '../src/telling/voice/es.ts';
import { OURS, ours } from './trains.ts';

// A limit of each kind, as a file and a job name it.
const WHICH: Readonly<Record<MeasuredKind, string>> = {
  pack: 'clearance',
  endplay: 'limit',
  preload: 'squeeze',
  band: 'travel',
  wear: 'limit',
};

// Everything that is measured of a train of ours, one of them twice or not at all.
const things = OURS.flatMap((file) => {
  const train = ours(file);
  return MEASURED_KINDS.flatMap((kind) => {
    return MEASURED[kind](train).map((name) => ({ file, kind, name }));
  });
});

it('is there in every kind in some train of ours', () => {
  expect(MEASURED_KINDS.filter((its) => !things.some(({ kind }) => kind === its))).toEqual([]);
});

describe('what is measured has its place', () => {
  it.each(things)('everywhere: $kind of $name, $file', ({ file, kind, name }) => {
    const train = ours(file);
    const standing = askStanding(train).filter((its) => its.kind === kind);
    expect(standing.map((its) => its.name)).toContain(name);
    const sheet = JSON.stringify(measureSheet(train, askMeasurements(train, {}), voiceOf('en')));
    expect(sheet).toContain(name);

    // Its limit can be told in a job, and one that is turned round is told of the file.
    const limit = { least: '0.90 mm', most: '0.10 mm' };
    const which =
      kind === 'pack' || kind === 'band' || kind === 'preload' ? WHICH[kind] : undefined;
    const told = { kind: 'limit', of: name, ...(which && { which }), limit, sure: true } as const;
    expect(limitMisfit(told, train)).toMatchObject({ problem: 'ends reversed' });
    const text = readFileSync(`trains/${file}.train.yaml`, 'utf8');
    const put = putLimit(text, { kind, name }, WHICH[kind], limit);
    if (!('text' in put)) throw new Error(JSON.stringify(put));
    const warned = lookAtFigures(readTrain(put.text));
    expect(warned).toContainEqual(
      expect.objectContaining({ problem: 'limits turned round', of: name }),
    );
  });
});

it.each(Object.entries({ en, es }))('what wears is told by its kind in %s', (_, messages) => {
  const selects = Object.entries(messages).filter(([, text]) =>
    /\bkind, select, bushing /u.test(text),
  );
  expect(selects.length).toBeGreaterThan(1);
  for (const [id, text] of selects) {
    // The last is what the select calls other.
    const forgotten = WEAR_KINDS.slice(0, -1).filter((kind) => !text.includes(` ${keyOf(kind)} {`));
    expect(forgotten, id).toEqual([]);
  }
});

it('what wears is told among what a file may say', () => {
  const [, told = ''] = /wear_kind \{([^}]*)\}/u.exec(en.expected) ?? [];
  expect(WEAR_KINDS.filter((kind) => !told.includes(kind))).toEqual([]);
});
