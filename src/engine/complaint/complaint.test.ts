import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Experience, readExperience } from '../experience/index.ts';
import { inquire } from '../cause/index.ts';
import { seenText } from '../suspects/index.ts';
import type { Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import { type Claim, complaintOf, complaintSeen } from './index.ts';

const here = (file: string) =>
  fs.readFileSync(new URL(`../../../${file}`, import.meta.url), 'utf8');
const trainOf = (text: string) => readTrain(text).train as Train;
const experience = readExperience(here('experience.yaml')).experience as Experience;
const kestrel = inquire(trainOf(here('trains/kestrel-three-speed.train.yaml')), experience);

function told({ symptom, places, except, shift, heat, load }: Claim): string {
  const but = except.length > 0 ? ` but ${except.join(' ')}` : '';
  const where = shift ? ` ${shift.join('-')}` : places.length > 0 ? ` in ${places.join(' ')}` : '';
  return [`${symptom}${where}${but}`, load, heat].filter(Boolean).join(' ');
}

// What drivers say: common practice, no source.
describe('a complaint in the driver’s words', () => {
  it.each([
    ['no reverse', ['no gear in R']],
    ['no drive in R', ['no drive in R']],
    ['no drive in drive', ['no drive in D']],
    ['It slips in second when hot', ['slips in 2 hot']],
    ['when it is hot, second slips and third flares', ['slips in 2 hot', 'flares in 3 hot']],
    ['slips in second when hot, no reverse', ['slips in 2 hot', 'no gear in R']],
    ['flares two to three', ['flares 2-3']],
    ['harsh into drive', ['harsh in D']],
    ['no engine braking except in overdrive', ['no braking but top']],
    ['it sits and revs in D', ['no drive in D']],
    [
      'Noise in first, second and reverse; third and fourth are quiet',
      ['noise in 1 2 R', 'quiet in 3 4'],
    ],
    ['takes ages to go into R, then slips in everything', ['late in R', 'slips in all']],
    ['It creeps in neutral. Park is late', ['creeps in N', 'late in P']],
    ['stays in first, never changes to second', ['stays in 1', 'no shift in 2']],
    ['Third, top and reverse are fine', ['good in 3 top R']],
    ['flat out in 4 it slips', ['slips in 4 heavy']],
    ['it binds in R', ['ties up in R']],
    ['patina en segunda en caliente', ['slips in 2 hot']],
    ['no hay marcha atrás', ['no gear in R']],
    ['ruido en primera y segunda', ['noise in 1 2']],
    ['se revoluciona de segunda a tercera', ['flares 2-3']],
    ['no retiene en segunda, salvo en frío', ['no braking in 2']],
    ['slips in reverse, not in second', ['slips in R but 2']],
    ['slips in every gear but second', ['slips in all but 2']],
    ['no drive in second', ['no drive in 2']],
    ['it has lost drive in third', ['no drive in 3 D']],
    ['engine revs up in second but car does not move', ['no drive in 2']],
    ['it slips in D and then will not move', ['no drive in D']],
    ['third is fine, but it does not move', ['good in 3', 'no drive']],
    ['reverse is weak', ['slips in R']],
    ['the engine braking is weak in second', []],
    ['it runs away at the change up to third', ['flares in 3']],
    ['on the two-three it runs away', ['flares 2-3']],
    ['it runs away downhill in second', ['no braking in 2']],
    ['it runs away between second and third', ['flares in 2 3']],
    ['no hay tracción en segunda', ['no drive in 2']],
    ['se acelera en segunda pero no se mueve', ['no drive in 2']],
    ['la marcha atrás va floja', ['slips in R']],
    ['se embala al cambiar a tercera', ['flares in 3']],
    ['no second, not in D', ['no gear in 2 D']],
  ])('%j', (text, claims) => {
    expect(complaintOf(text).claims.map(told)).toEqual(claims);
  });

  it('keeps what it does not know, and never fails', () => {
    expect(complaintOf('it smells of fish, no reverse')).toMatchObject({
      unknown: ['it smells of fish'],
      claims: [{ symptom: 'no gear' }],
    });
    for (const text of [
      '',
      '   ',
      '...;;,,',
      '\u0000',
      'and and and',
      'two '.repeat(2000),
      '🚗, R',
    ]) {
      expect(complaintOf(text).claims).toEqual([]);
    }
  });

  // What is not so is no symptom, and what else was meant nobody guesses.
  it.each([
    'it does not tie up in second',
    "it doesn't slip in second",
    'no longer slips',
    'it never slips in third',
    'no slipping in second',
    'no flare 2-3',
    'it is not harsh into drive',
    'does not growl in first',
    'second is not good',
    'ya no patina en segunda',
    'nunca patina',
    'no es brusco al meter D',
  ])('tells %j back', (text) => {
    expect(complaintOf(text)).toEqual({ claims: [], unknown: [text] });
    expect(complaintSeen(text, kestrel)).toEqual({ observations: [], said: [], unused: [text] });
  });

  it('hears what is so beside what is not', () => {
    const { claims, unknown } = complaintOf('it does not slip in second, but it slips in third');
    expect([claims.map(told), unknown]).toEqual([['slips in 3'], ['it does not slip in second']]);
  });

  it('takes no time or speed for a gear', () => {
    expect(complaintOf('slips after 2 seconds at 3 km').claims.map(told)).toEqual(['slips']);
  });
});

describe('what it means on a train', () => {
  const seen = (text: string) => {
    const { observations, unused } = complaintSeen(text, kestrel);
    return [seenText(observations).trim().split('\n'), unused];
  };

  it('is seen, and not for sure', () => {
    expect(seen('No reverse. Harsh into drive, it flares two to three when hot')).toEqual([
      [
        '- R: no drive, not sure',
        '- N to D: harsh, not sure',
        '- shift D 2-3 hot: flares, not sure',
      ],
      [],
    ]);
  });

  it('of no engine braking is where there should be some', () => {
    const [lines] = seen('no engine braking at all');
    expect(lines).toContain('- L 1 coast: runs free, not sure');
    expect(lines).not.toContain('- D 1 coast: runs free, not sure');
  });

  it('of a gear that never comes is the shift into it', () => {
    expect(seen('never changes to third')[0]).toEqual(['- shift D 2-3: none, not sure']);
  });

  it('of a car that starts in second is the ratio of second', () => {
    const [[line]] = seen('it starts in second') as [string[], string[]];
    expect(line).toMatch(/^- D 1: 1\.\d+, not sure$/u);
  });

  it.each([
    ['no drive in 2nd gear', ['- D 2: no drive, not sure']],
    ['no second', ['- shift D 1-2: none, not sure']],
    ['engine revs up in second but car does not move', ['- D 2: no drive, not sure']],
    [
      'reverse is weak and it runs away at the change up to third',
      ['- R: slips, not sure', '- shift D 2-3: flares, not sure'],
    ],
    ['runs away between second and third', ['- shift D 2-3: flares, not sure']],
    ['runs away in second', ['- L 2 coast: runs free, not sure']],
  ])('of %j is what a rebuilder would try', (text, lines) => {
    expect(seen(text)).toEqual([lines, []]);
  });

  it('is not of gears that were taken out', () => {
    const [lines] = seen('slips in every gear but second');
    expect(lines).toContain('- D 3: slips, not sure');
    expect(lines).not.toContain('- D 2: slips, not sure');
  });

  // What is said to be well is of the coast, and of the range of the lever, that was named.
  it.each([
    ['manual second brakes fine', ['- L 2 coast: brakes, not sure']],
    [
      'flares going into second, then third ok; manual second brakes fine',
      [
        '- shift D 1-2: flares, not sure',
        '- D 3: drives, not sure',
        '- L 2 coast: brakes, not sure',
      ],
    ],
    ['manual second pulls', ['- L 2: drives, not sure']],
    ['in L2 it brakes on coast', ['- L 2 coast: brakes, not sure']],
    ['in L 2 it pulls', ['- L 2: drives, not sure']],
    ['manual low holds back on the hill', ['- L 1 coast: brakes, not sure']],
    ['L 2 is fine on coast', ['- L 2 coast: brakes, not sure']],
    ['in D 2 it brakes on coast', ['- D 2 coast: brakes, not sure']],
    ['D 2 is fine on coast', ['- D 2 coast: runs free, not sure']],
    ['no engine braking in L2', ['- L 2 coast: runs free, not sure']],
    ['slips in manual second when it pulls', ['- L 2: slips, not sure']],
    ['en segunda manual frena bien', ['- L 2 coast: brakes, not sure']],
    ['retiene en L2', ['- L 2 coast: brakes, not sure']],
    ['en L 2 tira', ['- L 2: drives, not sure']],
    ['la corta retiene cuesta abajo', ['- L 1 coast: brakes, not sure']],
    ['second pulls', ['- D 2: drives, not sure']],
  ])('%j is of that gear and no other', (text, lines) => {
    expect(seen(text)).toEqual([lines, []]);
  });

  it.each([
    'manual fifth pulls',
    'second pulls badly',
    'L2 hardly brakes',
    'the brakes are fine',
    'it brakes',
    'en segunda apenas tira',
  ])('makes nothing of %j', (text) => {
    expect(seen(text)).toEqual([[''], [text]]);
  });

  it('of a gear that the train lacks is told back', () => {
    expect(seen('slips in eighth')).toEqual([[''], ['slips in eighth']]);
  });
});
