import { describe, expect, it } from 'vitest';
import { boltTexts, fillText } from './fastening.ts';
import { voiceOf } from '../voice/voice.ts';

describe('bolts', () => {
  // One pound-foot is 1.355 817 948 331 N·m, from the pound, the foot and standard gravity by
  // definition (NIST SP 811, appendix B.8: 1.355 818).
  it.each([
    ['24 Nm', '24\u00A0N·m (17.7\u00A0lb·ft)'],
    ['24.5 N·m', '24.5\u00A0N·m (18.1\u00A0lb·ft)'],
    ['9 Nm', '9\u00A0N·m (79.7\u00A0lb·in)'],
    ['18 lb ft', '18\u00A0lb·ft (24.4\u00A0N·m)'],
    ['72 lbin', '72\u00A0lb·in (8.1\u00A0N·m)'],
  ])('to %s', (torque, told) => {
    expect(boltTexts({ torque, count: 7 }, voiceOf('en')).at(-1)).toBe(
      `7 bolts to ${told}; unsourced. Your unit’s own data wins`,
    );
  });

  it('are new each time where the file says so, and drawn down in its order', () => {
    const bolts = { once: true, sequence: 'crosswise', source: 'manual p. 7', by: 'TW' };
    expect(boltTexts(bolts, voiceOf('en'))).toEqual([
      'Used once only: new bolts',
      'Drawn down evenly, a little at a time: crosswise',
      'Bolts: the torque is not in the file; source: manual p. 7, TW. Your unit’s own data wins',
    ]);
    expect(boltTexts({ ...bolts, torque: '9.5 Nm', count: 1 }, voiceOf('es'))).toEqual([
      'De un solo uso: tornillos nuevos',
      'Bajada por igual, poco a poco: crosswise',
      'Un tornillo a 9,5\u00A0N·m (84,1\u00A0lb·in); fuente: manual p. 7, TW. Mandan los datos propios de su unidad',
    ]);
  });
});

describe('fluid', () => {
  it.each([
    [
      { fill: '5.4 L', kind: 'the maker’s', source: 'manual' },
      '5.4 L goes in, the maker’s; source: manual. Your unit’s own data wins',
    ],
    [{}, 'How much goes in is not in the file; unsourced. Your unit’s own data wins'],
  ])('%j', (fluid, told) => {
    expect(fillText(fluid, voiceOf('en'))).toBe(told);
  });
});
