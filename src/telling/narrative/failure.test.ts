import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import {
  failuresOf,
  findingsIn,
  SIGNS_OF_THINGS,
  SIGNS_OF_UNITS,
} from '../../shop/causes/index.ts';
import { failureTexts, foundText } from './failure.ts';
import { findingText } from './stripping.ts';
import { LANGUAGES, voiceOf } from '../voice/index.ts';

const kestrel = readTrain(fs.readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8'))
  .train as Train;

describe.each(LANGUAGES)('in %s', (language) => {
  const voice = voiceOf(language);

  it.each(SIGNS_OF_THINGS)('%s, of a thing, is read back as it is told', (sign) => {
    const said = foundText({ sign, of: 'low brake', said: '' }, voice);
    expect(findingsIn(kestrel, [said], [])).toEqual([{ sign, of: 'low brake', said }]);
  });

  it.each(SIGNS_OF_UNITS)('%s, of the unit, is read back as it is told', (sign) => {
    const said = foundText({ sign, said: '' }, voice);
    expect(findingsIn(kestrel, [said], []).map((its) => its.sign)).toContain(sign);
  });

  // What a strip says of a part, and what of it is made.
  it.each([
    ['worn splines', 'worn splines'],
    ['worn ring groove', 'worn rings'],
    ['worn bushing', 'worn bushing'],
    ['chipped', 'broken'],
    ['scored face', 'worn thrust face'],
    ['loose pins', 'blued'],
    ['loose planets', 'blued'],
    ['blued', 'blued'],
    ['burnt', 'burnt'],
    ['worn linings', 'burnt'],
    ['hot spots', 'hot spots'],
    ['warped', 'hot spots'],
    ['slips both ways', 'turns both ways'],
    ['locks both ways', 'locks both ways'],
    ['backwards', 'wrong way round'],
    ['marked rollers', 'broken'],
    ['marked track', 'broken'],
    ['broken springs', 'broken'],
    ['cut seals', 'bad seal'],
    ['hard or cut', 'bad seal'],
    ['broken tangs', 'worn thrust face'],
    ['notched', 'worn splines'],
  ] as const)('%s, as the strip room writes it, is read', (is, sign) => {
    const said = `low brake: ${findingText(is, voice)}`;
    expect(findingsIn(kestrel, [said], []).map((its) => its.sign)).toContain(sign);
  });

  it('tells the cause, from what, and what is mended before the build', () => {
    const notes = ['second brake: burnt', 'low brake: hot spots'];
    const failures = failuresOf(kestrel, findingsIn(kestrel, notes, []));
    const texts = failures.map((failure) => failureTexts(failure, voice));
    expect(texts.flat().every((text) => /[.]$/u.test(text) && !text.includes('{'))).toBe(true);
    const [why] = texts[failures.findIndex(({ root }) => root === 'dragging device')] ?? [];
    expect(why).toMatch(/low brake.*second brake/u);
  });
});
