import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    next: 'Next',
    less: 'One less',
    more: 'One more',
    wipe: 'Wipe out the last digit',
  },
  es: {
    next: 'Siguiente',
    less: 'Uno menos',
    more: 'Uno más',
    wipe: 'Borrar la última cifra',
  },
});
