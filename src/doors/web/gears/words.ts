import { spoken } from '../words.ts';

export const words = spoken({
  en: {
    devices: 'Applied',
    turnedBy: 'Turned',
    drive: 'under power',
    coast: 'on the over-run',
    'rolled back': 'rolled back',
    'rolled back, input held': 'rolled back, input held',
  },
  es: {
    devices: 'Aplicados',
    turnedBy: 'Gira',
    drive: 'con motor',
    coast: 'en retención',
    'rolled back': 'hacia atrás',
    'rolled back, input held': 'hacia atrás, entrada sujeta',
  },
});
