import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    next: 'Next',
    less: 'One less',
    more: 'One more',
    wipe: 'Wipe out the last digit',
    unit: 'The unit',
    point: 'Decimal point',
    below: 'No reading is below nothing: take the sign off.',
  },
  es: {
    next: 'Siguiente',
    less: 'Uno menos',
    more: 'Uno más',
    wipe: 'Borrar la última cifra',
    unit: 'La unidad',
    point: 'Punto decimal',
    below: 'Ninguna lectura está bajo cero: quite el signo.',
  },
});
