import type { TestWord } from '../experience/index.ts';

/** Where a test is made. */
export const PLACES = ['on the road', 'standing still', 'on stands', 'on the bench'] as const;
export type TestPlace = (typeof PLACES)[number];

/** Where a test is made, the wheels turning or not. */
export function placeOf(test: TestWord): TestPlace {
  switch (test) {
    case 'under power':
    case 'coast':
    case 'noise':
    case 'shift':
    case 'slip log':
    case 'manual shift':
      return 'on the road';
    case 'engagement':
    case 'stall':
    case 'fluid':
    case 'codes':
    case 'selector':
    case 'pressure':
    case 'device pressure':
    case 'build record':
    case 'engine':
      return 'standing still';
    case 'stray pressure':
    case 'pan':
    case 'filter':
    case 'band check':
    case 'valve body':
    case 'air check':
      return 'on stands';
    case 'converter':
    case 'pump':
    case 'seal rings':
    case 'seals':
    case 'one-way check':
    case 'end play':
    case 'inspection':
    case 'hand check':
      return 'on the bench';
  }
}

/** Whether it can be made of a unit that is in pieces: by looking at a part, or a record. */
export function isOfParts(test: TestWord): boolean {
  return OF_PARTS.has(test);
}

const OF_PARTS: ReadonlySet<TestWord> = new Set([
  'build record',
  'pan',
  'filter',
  'valve body',
  'converter',
  'pump',
  'seal rings',
  'seals',
  'one-way check',
  'inspection',
]);
