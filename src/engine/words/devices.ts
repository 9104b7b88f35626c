import type { DeviceKind } from '../train/index.ts';
import type { Concept } from './concept.ts';

/** What each kind of device is called. */
export const DEVICES = {
  clutch: {
    en: 'clutch',
    es: 'embrague',
    read: ['multi-plate clutch', 'clutch pack', 'disc clutch', 'lamellar clutch', 'embrague'],
    stands: ['multi-plate clutch', 'embrague'], // where a brake is called multi-plate beside it
    both: { en: /(?<!one-way )\bclutch\b/i, es: /embrague/i },
  },
  brake: {
    en: 'brake',
    es: 'freno',
    read: ['multi-plate brake', 'brake clutch', 'holding clutch', 'grounded clutch', 'freno'],
    stands: ['multi-plate brake', 'freno'],
  },
  band: {
    en: 'band',
    es: 'banda',
    read: ['brake band', 'banda'],
    stands: ['banda'],
    not: { es: /cinta de freno/i },
    both: { en: /\bband\b/i, es: /banda/i },
  },
  pawl: {
    en: 'park pawl',
    es: 'trinquete',
    file: 'pawl',
    read: ['parking pawl'],
    both: { en: /park pawl/i, es: /trinquete/i },
  },
  'one-way': {
    en: 'one-way clutch',
    es: 'rueda libre',
    file: 'one-way',
    read: [
      'one-way clutch',
      'freewheel',
      'overrunning clutch',
      'sprag',
      'roller clutch',
      'mechanical diode',
      'rueda libre',
    ],
    stands: ['one-way clutch', 'sprag', 'rueda libre'], // a sprag in the name of somebody's device
    not: { es: /embragues? unidireccional|embragues? de un sentido/i },
    both: { en: /\bone-way clutch/i, es: /ruedas? libres?/i },
  },
} satisfies Record<DeviceKind, Concept>;
