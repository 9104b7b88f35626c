import type { Practised, TestWord } from './experience.ts';

/**
 * Tests that came later than some shop's file, as `experience.yaml` has them (common practice, no
 * source): a file without them is read as if it had these.
 */
export const LATER = {
  pump: {
    minutes: 20,
    risk: 'none',
    at: 'on the bench',
    with: 'rule',
    shows: {
      'pump worn': { good: 8, worn: 92 },
      'filter blocked': { good: 70, worn: 30 },
      'teeth stripped': { good: 70, worn: 30 },
      otherwise: { good: 90, worn: 10 },
    },
  },
  seals: {
    minutes: 15,
    risk: 'none',
    at: 'on the bench',
    with: 'rag and light',
    shows: {
      'seal leaks': { good: 8, cut: 92 },
      otherwise: { good: 95, cut: 5 },
    },
  },
  'one-way check': {
    minutes: 5,
    risk: 'none',
    at: 'on the bench',
    with: 'bench',
    shows: {
      'one-way clutch slips': { 'one way': 25, 'turns both ways': 75 },
      'one-way clutch seized': { 'one way': 3, 'locks both ways': 97 },
      'one-way clutch backwards': { 'one way': 3, 'wrong way': 97 },
      'one-way clutch left out': { 'one way': 3, 'turns both ways': 97 },
      otherwise: {
        'one way': 98.8,
        'turns both ways': 0.4,
        'locks both ways': 0.4,
        'wrong way': 0.4,
      },
    },
  },
} as const satisfies Partial<Record<TestWord, Practised>>;
