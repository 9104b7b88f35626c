import { describe, expect, it } from 'vitest';
import { voiceOf } from '../voice/index.ts';
import type { Felt, Mistake } from '../../engine/plan/index.ts';
import type { End, Part } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { feltFor, feltText, mistakeText, partTexts } from './building.ts';

const { train } = readTrain(`
holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
joined: { drum: [set.ring] }
devices:
  sun clutch: { clutch: [crank, set.sun] }
  ring band: { band: drum }
`);

// A mistake, in English and in Spanish.
const MISTAKES: readonly [mistake: Mistake, en: string, es: string][] = [
  [
    { what: 'device', device: 'sun clutch', is: 'will not release' },
    'sun clutch: drags, plates jammed',
    'sun clutch: arrastra, discos trabados',
  ],
  [
    { what: 'device', device: 'ring band', is: 'will not release' },
    'ring band: drags, set too tight',
    'ring band: arrastra, demasiado ajustada',
  ],
  [
    { what: 'device', device: 'ring band', is: 'will not apply' },
    'ring band: does not grip',
    'ring band: no agarra',
  ],
  // Common practice, no source: a cage that slips feels as one that is not there.
  [
    { what: 'one-way', device: 'sprag', is: 'left out' },
    'sprag: left out, or worn and slips',
    'sprag: sin montar, o patina por desgaste',
  ],
  [{ what: 'one-way', device: 'sprag', is: 'backwards' }, 'sprag: backwards', 'sprag: al revés'],
  [
    { what: 'join', join: 'drum', is: 'stripped', of: 'set.ring' },
    'set ring: not home in the drum',
    'corona set: sin asentar en drum',
  ],
  [{ what: 'part', part: 'pack', is: 'left out' }, 'pack: left out', 'pack: sin montar'],
  [
    { what: 'slip', part: 'washer', is: 'wrong thickness' },
    'washer: wrong thickness',
    'washer: espesor equivocado',
  ],
  [
    { what: 'slip', part: 'race', is: 'wrong way round' },
    'race: wrong way round',
    'race: con la cara al revés',
  ],
  [{ what: 'slip', part: 'pump', is: 'out of line' }, 'pump: out of line', 'pump: sin alinear'],
  [
    { what: 'slip', part: 'pack', is: 'miscounted' },
    'pack: plates miscounted',
    'pack: discos mal contados',
  ],
];

describe('a mistake in a build', () => {
  it.each(MISTAKES)('%j', (mistake, en, es) => {
    if (!train) throw new Error('the train of this test has a mistake');
    expect(mistakeText(mistake, train)).toBe(en);
    expect(mistakeText(mistake, train, voiceOf('es'))).toBe(es);
  });
});

describe('what hands feel', () => {
  it.each<[Felt, string, string]>([
    ['both ways', 'turns both ways', 'gira en ambos sentidos'],
    ['neither way', 'turns neither way', 'no gira en ningún sentido'],
    ['clockwise only', 'turns clockwise only', 'gira solo en sentido horario'],
    ['anticlockwise only', 'turns anticlockwise only', 'gira solo en sentido antihorario'],
  ])('%s', (felt, en, es) => {
    expect(feltText(felt)).toBe(en);
    expect(feltText(felt, voiceOf('es'))).toBe(es);
    // From behind the ways change places, and back again.
    const behind = { seenFrom: 'output', hold: 'outer' } as const;
    expect(feltFor(feltFor(felt, behind), behind)).toBe(felt);
    expect(feltFor(felt, behind) === felt).toBe(felt === 'both ways' || felt === 'neither way');
  });
});

describe('what a part asks for', () => {
  const part = (notes: Partial<Part>): Part => ({ name: 'part', carries: [], ...notes });

  it.each<[Partial<Part>, End | undefined, string, string]>([
    [{ face: 'the lip' }, undefined, 'Faces input: the lip', 'Mira a la entrada: the lip'],
    [
      { face: 'the lip', faces: 'output' },
      'input',
      'Faces output (down now): the lip',
      'Mira a la salida (ahora abajo): the lip',
    ],
    [{ faces: 'up' }, 'output', 'Faces output (up now)', 'Mira a la salida (ahora arriba)'],
    [{ faces: 'down' }, 'output', 'Faces input (down now)', 'Mira a la entrada (ahora abajo)'],
    [{ face: 'the cup', faces: 'up' }, undefined, 'Faces up: the cup', 'Mira arriba: the cup'],
  ])('%j faces an end, with the %s up', (notes, up, en, es) => {
    expect(partTexts(part(notes), voiceOf('en'), up)).toEqual([en]);
    expect(partTexts(part(notes), voiceOf('es'), up)).toEqual([es]);
  });

  it.each<[Partial<Part>, string[], string[]]>([
    [{}, [], []],
    [
      { face: 'the lip', inner: 'the shaft', outer: 'the drum', align: 'the holes' },
      [
        'Faces input: the lip',
        'Engages inside: the shaft',
        'Engages outside: the drum',
        'Line up: the holes',
      ],
      [
        'Mira a la entrada: the lip',
        'Engrana por dentro: the shaft',
        'Engrana por fuera: the drum',
        'Alinear: the holes',
      ],
    ],
    [
      { frictions: 4, steels: 1 },
      ['Count the plates: 4 frictions and 1 steel'],
      ['Contar los discos: 4 de fricción y 1 de acero'],
    ],
    [{ steels: 3 }, ['Count the plates: 3 steels'], ['Contar los discos: 3 de acero']],
    [{ frictions: 1 }, ['Count the plates: 1 friction'], ['Contar los discos: 1 de fricción']],
    [
      { selective: true, refit: 'reuse', photo: 'a.jpg' },
      [
        'Selective: measure, and choose',
        'Goes in again: clean and look it over',
        'Photograph: a.jpg',
      ],
      ['Selectiva: medir y elegir', 'Se vuelve a montar: limpiar y revisar', 'Fotografía: a.jpg'],
    ],
    [{ selective: false, refit: 'replace' }, ['A new one goes in'], ['Se monta una nueva']],
  ])('%j', (notes, en, es) => {
    expect(partTexts(part(notes))).toEqual(en);
    expect(partTexts(part(notes), voiceOf('es'))).toEqual(es);
  });
});
